-- For Neovim 0.11 or later, in the configuration of whoever writes.
vim.lsp.config('holdback', {
  cmd = { 'npx', 'holdback', 'lsp', '--stdio' },
  filetypes = { 'markdown', 'yaml' },
  root_markers = { 'property.yaml', 'content/property.yaml' },
})
vim.lsp.enable('holdback')

-- The JSON Schemas, for a YAML language server beside it.
local schemas = {
  ['./node_modules/holdback/schema/json/property.schema.json'] = 'content/property.yaml',
  ['./node_modules/holdback/schema/json/names.schema.json'] = 'content/names.yaml',
  ['./node_modules/holdback/schema/json/people.schema.json'] = 'content/people.yaml',
  ['./node_modules/holdback/schema/json/back.schema.json'] = 'content/backs/*.yaml',
  ['./node_modules/holdback/schema/json/plan.schema.json'] = 'content/*/plan.yaml',
  ['./node_modules/holdback/schema/json/roster.schema.json'] = 'content/*/rosters/*.yaml',
  ['./node_modules/holdback/schema/json/corrections.schema.json'] = 'content/*/corrections.yaml',
}
vim.lsp.config('yamlls', {
  cmd = { 'yaml-language-server', '--stdio' },
  filetypes = { 'yaml' },
  root_markers = { 'content/property.yaml' },
  settings = { yaml = { schemas = schemas } },
})
vim.lsp.enable('yamlls')
