// What a list beside the meshes, expected.tsv, says that a judge should find of the files of one kind.
import fs from 'node:fs';
import path from 'node:path';

/** The files of a folder that end like this, with parts, triangles, volume (mm3) and centroid (mm, z up) of each. */
function listed(folder, ending) {
  return fs.readFileSync(path.join(folder, 'expected.tsv'), 'utf8').split('\n')
    .map(line => line.split('\t'))
    .filter(([file]) => file.endsWith(ending))
    .map(([file, ...figures]) => {
      const [parts, triangles, volume, ...centroid] = figures.map(Number);
      return { file, bytes: fs.readFileSync(path.join(folder, file)), parts, triangles, volume, centroid };
    });
}

/** Ends the program with 1 and a sentence at the first file of the folder with which a judge is not content. */
export async function judgeAll(ending, judge) {
  const [folder] = process.argv.slice(2);
  if (folder === undefined) {
    console.error('usage: run JUDGE.mjs FOLDER');
    process.exit(2);
  }
  const files = listed(folder, ending);
  if (files.length === 0) {
    console.error(`${folder}/expected.tsv lists no ${ending} file`);
    process.exit(1);
  }
  for (const expected of files) {
    try {
      await judge(expected);
    } catch (fault) {
      console.error(`${expected.file}: ${fault.message ?? fault}`);
      process.exit(1);
    }
  }
  console.log(`${files.length} ${ending} files read, all as expected`);
}
