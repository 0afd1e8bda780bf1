import { describe, expect, test } from 'vitest';
import { sourceTexts } from '../support/files.ts';
import { breaches, ROOMS } from '../support/staircase.ts';

describe('the staircase', () => {
  test('imports in src only go down', () => {
    const files = sourceTexts();
    const rooms = new Set(Object.keys(files).map((file) => file.split('/')[0]));
    expect([...rooms].sort(), 'every room is there to be checked').toEqual([...ROOMS].sort());
    expect(breaches(files)).toEqual([]);
  });

  test('a house that keeps the rule has no breach', () => {
    expect(
      breaches({
        'sources/sources.ts': '',
        'sources/source.ts': "import { InputError } from '../quantity/units.ts'; import { SOURCES } from './sources.ts';",
        'quantity/units.ts': '',
        'quantity/fields.ts': "import type { K } from '../sources/sources.ts';",
        'conductor/awg.ts': "import type { K } from '../sources/sources.ts'; import { m } from '../quantity/units.ts';",
        'schedule/index.ts': "import { awg } from '../conductor/awg.ts';",
        'working/index.ts': "import { create } from 'mathjs';",
        'index.ts': "export * from './conductor/awg.ts'; export * from './sources/source.ts';",
        'cli.ts': "import { readFileSync } from 'node:fs'; import { x } from './schedule/index.ts';",
      }),
    ).toEqual([]);
  });

  const base = { 'quantity/units.ts': '', 'conductor/awg.ts': '', 'sources/sources.ts': '', 'schedule/index.ts': '', 'cable/cable.ts': '' };
  const violations: readonly (readonly [string, string, string, string])[] = [
    [
      'a lower room that imports a higher one',
      'conductor/x.ts',
      "import { c } from '../cable/cable.ts';",
      'conductor/x.ts:1 imports cable/cable.ts',
    ],
    ['types going up', 'conductor/x.ts', "\nimport type { C } from '../cable/cable.ts';", 'conductor/x.ts:2 imports cable/cable.ts'],
    ['a re-export going up', 'conductor/x.ts', "export * from '../cable/cable.ts';", 'which is higher'],
    ['a dynamic import going up', 'conductor/x.ts', "const c = await import('../cable/cable.ts');", 'which is higher'],
    ['an import type going up', 'conductor/x.ts', "type C = import('../cable/cable.ts').Cable;", 'which is higher'],
    ['quantity that imports anything', 'quantity/x.ts', "import { a } from '../sources/sources.ts';", 'quantity imports nothing'],
    ['a package in the core', 'plan/x.ts', "import { z } from 'zod';", 'plan/x.ts:1 imports the package zod'],
    ['a required package in the core', 'plan/x.ts', "const z = require('zod');", 'imports the package zod'],
    ['a computed import', 'plan/x.ts', 'const z = await import(name);', 'imports the package name'],
    ['a node builtin in the core', 'cable/x.ts', "import { join } from 'node:path';", 'imports node:path'],
    ['a node builtin without its prefix', 'cable/x.ts', "import { join } from 'path';", 'imports the package path'],
    ['a node builtin in schedule', 'schedule/x.ts', "import { readFileSync } from 'node:fs';", 'only cli.ts may'],
    ['a package that schedule has no need of', 'schedule/x.ts', "import { evaluate } from 'mathjs';", 'imports the package mathjs'],
    ['a package where files are read', 'schedule/x.ts', "import { z } from 'zod';", 'imports the package zod'],
    ['a package whose name only begins alike', 'working/x.ts', "import { x } from 'mathjs-extra';", 'imports the package mathjs-extra'],
    ['a package in the command', 'cli.ts', "import { x } from 'zod';", 'imports the package zod'],
    ['the registry at run time in the core', 'cable/x.ts', "import { SOURCES } from '../sources/sources.ts';", 'at run time'],
    ['the bibliography reaching up', 'sources/x.ts', "import { awg } from '../conductor/awg.ts';", 'which is higher'],
    ['the root entry entering schedule', 'index.ts', "export * from './schedule/index.ts';", 'ends at plan'],
    ['a file in no room', 'helpers/x.ts', '', 'helpers/x.ts belongs to no room'],
    ['a file that is not there', 'cable/x.ts', "import { a } from './gone.ts';", 'which does not exist'],
    ['a file that imports itself', 'cable/x.ts', "import { a } from './x.ts';", 'cycle: cable/x.ts -> cable/x.ts'],
  ];
  test.each(violations)('refuses %s', (_name, file, text, message) => {
    const found = breaches({ ...base, [file]: text });
    expect(found).toHaveLength(1);
    expect(found[0]).toContain(message);
  });

  test('refuses a cycle of several files in one room', () => {
    const found = breaches({
      'cable/a.ts': "import { b } from './b.ts';",
      'cable/b.ts': "import { c } from './c.ts';",
      'cable/c.ts': "import type { A } from './a.ts';",
    });
    expect(found).toEqual(['cycle: cable/a.ts -> cable/b.ts -> cable/c.ts -> cable/a.ts']);
  });

  test('refuses a folder and a file beside it that import each other', () => {
    const found = breaches({
      'plan/a.ts': "import { b } from './inner/b.ts';",
      'plan/inner/b.ts': '',
      'plan/inner/c.ts': "import { a } from '../a.ts';",
    });
    expect(found).toEqual(['cycle: plan/a.ts -> plan/inner/ -> plan/a.ts']);
  });
});
