#!/usr/bin/env node
// Ended at once where nothing is left to write: Node would tidy up its memory first, which takes a tenth of its start.
require('./load-bundle.js')
  .load('main.cjs')
  .main()
  .then((hasLeft) => hasLeft && process.exit());
