// Runs the Khronos glTF validator (npm package gltf-validator) over files. Exit 0: no error and no warning.
'use strict';
const fs = require('fs');
const validator = require('gltf-validator');

async function main() {
    let faults = 0;
    for (const name of process.argv.slice(2)) {
        const report = await validator.validateBytes(new Uint8Array(fs.readFileSync(name)), {maxIssues: 50});
        const {numErrors, numWarnings, numInfos, messages} = report.issues;
        console.log(`${name}: ${numErrors} errors, ${numWarnings} warnings, ${numInfos} notes, ` +
                    `${report.info.totalTriangleCount} triangles, ${report.info.drawCallCount} draws`);
        for (const m of messages) console.log(`  ${m.code} ${m.pointer}: ${m.message}`);
        faults += numErrors + numWarnings;
    }
    process.exitCode = faults === 0 ? 0 : 1;
}

main();
