#!/usr/bin/env node
require('./load-bundle.js').load('main.cjs').main();
