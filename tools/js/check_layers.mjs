// Refuses an include or an import that runs the wrong way. `tools/check_layers [ROOT]`.
import { checkCpp } from './layers_cpp.mjs';
import { checkJs } from './layers_js.mjs';
import { isProgram, root } from './paths.mjs';

export const checkLayers = (folder = root) => [...checkCpp(folder), ...checkJs(folder)];

if (isProgram(import.meta.url)) {
  const problems = checkLayers(process.argv[2]);
  for (const problem of problems) console.error(problem);
  if (problems.length > 0) process.exitCode = 1;
  else console.log('layers: every include and import runs the right way');
}
