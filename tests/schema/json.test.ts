import { readFileSync, readdirSync } from 'node:fs';

import { Ajv2020 } from 'ajv/dist/2020.js';
import formats from 'ajv-formats';
import { describe, expect, expectTypeOf, test } from 'vitest';

import { validate } from '../../pipeline/read/index.js';
import { CheckReport, PublicData, SalesFront } from '../../schema/index.js';
import type { CardFront, PlanFile, PropertyFile, PublicRun, Subset } from '../../schema/index.js';
import { jsonSchemas } from '../../schema/make-json.js';
import { schemasIn } from './keywords.js';

const folder = new URL('../../schema/json/', import.meta.url);
const SCHEMAS = [...jsonSchemas()].map(([file, text]) => ({ file, text }));

function parsed(text: string): object {
  return JSON.parse(text) as object;
}

/** A validator that is set up apart from the one that reads files. */
function strictValidator(): Ajv2020 {
  const ajv = new Ajv2020({ strict: true, strictRequired: true, allErrors: true });
  formats.default(ajv, ['date']);
  ajv.addFormat('instant', /^\d{4}-/);
  ajv.addFormat('time-zone', /^[A-Z]/i);
  return ajv;
}

describe('the JSON Schema files', () => {
  test('are those that the shapes make, byte by byte', () => {
    const there = readdirSync(folder).sort();
    // `npx tsx tests/setup/write-schemas.ts` writes them again.
    expect(there).toStrictEqual(SCHEMAS.map(({ file }) => file).sort());
    for (const { file, text } of SCHEMAS) {
      expect(readFileSync(new URL(file, folder), 'utf8'), file).toBe(text);
    }
  });

  test.each(SCHEMAS)(
    '$file is JSON Schema 2020-12 that a strict validator takes',
    ({ file, text }) => {
      const schema = parsed(text);
      expect(schema).toMatchObject({
        $schema: 'https://json-schema.org/draft/2020-12/schema',
        $id: file,
      });
      expect(text.endsWith('}\n')).toBe(true);
      const ajv = strictValidator();
      expect(ajv.validateSchema(schema)).toBe(true);
      expect(typeof ajv.compile(schema)).toBe('function');
    },
  );

  test('a strict validator would refuse a misspelt keyword', () => {
    expect(() => strictValidator().compile({ type: 'string', minLenght: 1 })).toThrow(/minLenght/);
  });

  test.each(SCHEMAS)('$file closes every object against unknown keys', ({ text, file }) => {
    const open = schemasIn(JSON.parse(text)).filter(
      (schema) => schema['type'] === 'object' && schema['additionalProperties'] !== false,
    );
    // The digests of a release, and of what it keeps, are by file name, any text.
    expect(open).toHaveLength(file === 'public-release.schema.json' ? 2 : 0);
  });

  test('say the same as the shapes', () => {
    const ajv = strictValidator();
    const sales = ajv.compile(parsed(jsonSchemas().get('sales.schema.json') ?? ''));
    const good = { kind: 'box', goes: 'unset', spoiler: 'open' };
    const bad = [
      {},
      { ...good, kind: 'bag' },
      { ...good, more: 1 },
      { ...good, sent: '2026-02-30' },
    ];
    expect(sales(good)).toBe(true);
    expect(validate(SalesFront, good).ok).toBe(true);
    for (const each of bad) {
      expect(sales(each)).toBe(false);
      expect(validate(SalesFront, each).ok).toBe(false);
    }
  });

  test('of outputs take an output and refuse one with more in it', () => {
    const report = {
      ok: true,
      counts: { sets: 0, cards: 0, errors: 0, warnings: 0, accepted: 0 },
      findings: [],
    };
    expect(validate(CheckReport, report).ok).toBe(true);
    expect(validate(CheckReport, { ...report, secret: 'x' }).ok).toBe(false);
    const data = {
      format: 1,
      asOf: '2027-04-16T09:00:00+01:00[Europe/London]',
      preview: false,
      property: {
        title: 'The Lake',
        zone: 'Europe/London',
        legal: null,
        look: { accent: null, paper: null, ink: null, type: null },
        siteTitle: 'The Lake',
        address: null,
        dataTerms: null,
        levels: [],
      },
      openings: [],
      news: [],
      sets: [],
    };
    expect(validate(PublicData, data).ok).toBe(true);
    expect(validate(PublicData, { ...data, property: { ...data.property, writer: 'x' } }).ok).toBe(
      false,
    );
  });
});

/** Checked by the compiler: the types are those of the shapes, optional keys included. */
test('the types are those of the schemas', () => {
  expectTypeOf<CardFront['number']>().toEqualTypeOf<string>();
  expectTypeOf<CardFront>().toHaveProperty('run').toEqualTypeOf<number | undefined>();
  expectTypeOf<CardFront['state']>().toEqualTypeOf<'draft' | 'ready' | undefined>();
  expectTypeOf<CardFront['bio']>().toEqualTypeOf<'none' | undefined>();
  expectTypeOf<CardFront['holds']>().toEqualTypeOf<Record<string, string> | undefined>();
  expectTypeOf<PlanFile['stage']>().toEqualTypeOf<'planning' | 'writing' | 'locked'>();
  expectTypeOf<Extract<Subset['numbers'], string>>().toEqualTypeOf<'none'>();
  expectTypeOf<Extract<Subset['numbers'], { from: number }>['to']>().toEqualTypeOf<number>();
  expectTypeOf<PropertyFile['since']>().toEqualTypeOf<string>();
  expectTypeOf<Extract<PropertyFile['approvals'], string>>().toEqualTypeOf<'none'>();
  expectTypeOf<Extract<PublicRun, { held: true }>['held']>().toEqualTypeOf<true>();
  // @ts-expect-error a card has a level
  const card: CardFront = { number: '1', name: 'Pim' };
  expect(card).toBeDefined();
});
