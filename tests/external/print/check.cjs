// Has manifold-3d (npm package, a kernel of somebody else's) take up the solids that check.py read from STL and 3MF, and holds what
// it makes of them against the volumes found there. Exit 0: every one is a manifold of that volume, and broken ones are refused.
//
// Use: check.cjs NODE_MODULES FOLDER
'use strict';
const fs = require('fs');
const path = require('path');
const url = require('url');

const exact = 1e-6; // relative
// It swaps edges of triangles that are narrower than single floats tell: of a few round logs that moves the surface a little.
const swapped = 2e-6, fewSwapped = 0.01; // of all solids

function meshOf(library, solid) {
    // About its middle: single floats are finest near zero, and edges shorter than they tell apart are dropped.
    const middle = [0, 1, 2].map(i => {
        const all = solid.points.map(p => p[i]);
        return (Math.min(...all) + Math.max(...all)) / 2;
    });
    const near = solid.points.map(p => p.map((v, i) => v - middle[i]));
    return new library.Mesh({numProp: 3, vertProperties: Float32Array.from(near.flat()), triVerts: Uint32Array.from(solid.triangles.flat())});
}

/// What is wrong with it; nothing where it is a manifold of its volume.
function faultOf(library, solid) {
    let body;
    try {
        body = library.Manifold.ofMesh(meshOf(library, solid));
    } catch (error) {
        return `is refused: ${error.message || error}`;
    }
    try {
        if (body.status() !== 'NoError') return `is ${body.status()}`;
        if (body.isEmpty()) return 'is empty';
        const volume = body.volume(), off = Math.abs(volume / solid.volume - 1);
        if (off > exact) ++count.swapped;
        return off < swapped ? null : `is of ${volume} mm3 instead of ${solid.volume}`;
    } finally {
        body.delete();
    }
}

const count = {swapped: 0};

const breaks = {
    'a triangle less': solid => ({...solid, triangles: solid.triangles.slice(1)}),
    'a triangle turned': solid => ({...solid, triangles: [[...solid.triangles[0]].reverse(), ...solid.triangles.slice(1)]}),
    'a triangle twice': solid => ({...solid, triangles: [solid.triangles[0], ...solid.triangles]}),
    'inside out': solid => ({...solid, triangles: solid.triangles.map(t => [...t].reverse())}),
    'a point moved': solid => ({...solid, points: solid.points.map((p, i) => i === 5 ? p.map(v => v + 0.5) : p)}),
};

async function main(modules, folder) {
    const library = await (await import(url.pathToFileURL(path.join(modules, 'manifold-3d/manifold.js')).href)).default();
    library.setup();
    let wrong = 0, solids = 0, some;
    for (const name of fs.readdirSync(folder).filter(each => each.endsWith('.json'))) {
        const all = Object.entries(JSON.parse(fs.readFileSync(path.join(folder, name))));
        for (const [what, solid] of all) {
            const fault = faultOf(library, solid);
            if (fault) console.log(`${name} ${what} ${fault}`);
            wrong += fault ? 1 : 0;
        }
        solids += all.length;
        some = all[0][1];
    }
    console.log(`${count.swapped} solids with edges swapped`);
    if (count.swapped > fewSwapped * solids) ++wrong;
    for (const [way, broken] of Object.entries(breaks)) {
        const found = faultOf(library, broken(some));
        if (!found) console.log(`${way} was not noticed`);
        wrong += found ? 0 : 1;
    }
    console.log(`${solids} solids, ${Object.keys(breaks).length} breaks, ${wrong} wrong`);
    process.exitCode = wrong === 0 && solids > 400 ? 0 : 1;
}

main(process.argv[2], process.argv[3]);
