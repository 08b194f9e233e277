import type { ColourBox, DrawnLine, DrawnSide, DrawnZone } from '../../protocol.js';

/** A side of a card as it prints: words where they were measured, what is over in red. */
export function Side(props: {
  readonly side: DrawnSide;
  readonly label: string;
  /** Where the page has the picture; null where there is none, or it is still being fetched. */
  readonly art: string | null;
}) {
  const { side, label, art } = props;
  const { extent } = side;
  const lies = side.width > side.height ? 'lying' : '';
  return (
    <figure class={lies}>
      <figcaption>{label}</figcaption>
      <svg
        viewBox={`0 0 ${side.width} ${side.height}`}
        role="img"
        aria-label={`${label}: ${wordsOf(side)}`}
      >
        {side.ground.map((box, at) => (
          <Fill key={at} box={box} />
        ))}
        {side.art === 'picture' && art !== null && (
          <image {...placeOf(extent)} preserveAspectRatio="xMidYMid slice" href={art} />
        )}
        {side.art === 'missing' && <NoPicture side={side} />}
        {side.strips.map((box, at) => (
          <Fill key={at} box={box} />
        ))}
        {side.zones.map((zone) => (
          <Zone key={zone.zone} zone={zone} />
        ))}
      </svg>
    </figure>
  );
}

function wordsOf({ zones }: DrawnSide): string {
  const said = zones.map(({ lines }) =>
    lines
      .flatMap(({ pieces }) => pieces.flatMap(({ words }) => words.map(({ text }) => text)))
      .join(' '),
  );
  return said.length === 0 ? 'no words' : said.join('. ');
}

function placeOf({ x, y, width, height }: Omit<ColourBox, 'colour'>) {
  return { x, y, width, height };
}

function Fill({ box }: { readonly box: ColourBox }) {
  return <rect {...placeOf(box)} fill={box.colour} />;
}

function NoPicture({ side: { extent, width, height } }: { readonly side: DrawnSide }) {
  return (
    <>
      <rect {...placeOf(extent)} class="no-picture" />
      <text
        x={width / 2}
        y={height / 2}
        text-anchor="middle"
        font-size="9"
        class="no-picture-words"
      >
        No picture yet
      </text>
    </>
  );
}

function Zone({ zone }: { readonly zone: DrawnZone }) {
  return (
    <>
      <g font-size={zone.size} fill={zone.colour}>
        {zone.lines.map((line, at) => (
          <Line key={at} line={line} />
        ))}
      </g>
      {!zone.fits && <rect {...placeOf(zone.box)} class="over-box" />}
    </>
  );
}

function Line({ line }: { readonly line: DrawnLine }) {
  return (
    <>
      {line.pieces.map(({ font, tracking, ligatures, words }, at) => (
        <text
          key={at}
          y={line.baseline}
          font-family={`holdback-${font}`}
          class={[line.overset ? 'over' : '', ligatures ? '' : 'apart'].join(' ').trim()}
          {...(tracking === 0 ? {} : { 'letter-spacing': String(tracking) })}
        >
          {words.map((word, which) => (
            <tspan key={which} x={word.x}>
              {which < words.length - 1 ? `${word.text} ` : word.text}
            </tspan>
          ))}
        </text>
      ))}
    </>
  );
}
