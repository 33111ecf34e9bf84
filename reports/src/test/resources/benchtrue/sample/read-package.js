// Reads a data package row by row with another program's reader, and prints what does not meet the description.
const {Package} = require('datapackage');

// A table in several files is read file by file: the reader takes one file a table.
function oneFileEach(descriptor) {
  const resources = descriptor.resources.flatMap(resource =>
    [].concat(resource.path).map((path, part) =>
      ({...resource, path, name: resource.name + '-' + part, schema: {...resource.schema, foreignKeys: undefined}})));
  return JSON.parse(JSON.stringify({...descriptor, resources}));
}

(async () => {
  const [file, folder] = process.argv.slice(2);
  const whole = await Package.load(file);
  whole.errors.forEach(error => console.log('descriptor: ' + error.message));
  const parts = await Package.load(oneFileEach(whole.descriptor), {basePath: folder});
  parts.errors.forEach(error => console.log('descriptor: ' + error.message));
  for (const resource of parts.resources) {
    const rows = await resource.read({forceCast: true});
    rows.filter(row => row instanceof Error).forEach(error =>
      console.log(resource.name + ', row ' + error.rowNumber + ': '
        + (error.errors || [error]).map(one => one.message).join('; ')));
    console.log('read ' + rows.length + ' rows of ' + resource.name);
  }
})().catch(error => { console.error(error); process.exit(1); });
