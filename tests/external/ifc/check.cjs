// Has web-ifc (npm package, a geometry kernel of somebody else's) open IFC files and holds what it makes of them against what
// check.py left beside them: FOLDER/NAME.json for FOLDER/NAME/shell.ifc. Exit 0: every element is there, once, where it should
// be, and of the volume it should be of.
//
// Use: check.cjs FOLDER
'use strict';
const fs = require('fs');
const path = require('path');
const webIfc = require('web-ifc');

const exact = 1e-6; // relative
const samePlace = 0.02; // mm: of boxes, in single floats of some ten metres
const sides = 24; // of a circle as it is asked for
const mmPerM = 1000;
const offOfWood = 50; // mm: so that no face goes through where volumes are summed from, and one that is missing is missed

/// How much of a circle its polygon is, inscribed.
const ofCircle = sides / 2 * Math.sin(2 * Math.PI / sides) / Math.PI;

function bodyOf(api, model, mesh) {
    const body = {volume: 0, low: [Infinity, Infinity, Infinity], high: [-Infinity, -Infinity, -Infinity]};
    for (let i = 0; i < mesh.geometries.size(); ++i) {
        const placed = mesh.geometries.get(i);
        const geometry = api.GetGeometry(model, placed.geometryExpressID);
        const numbers = api.GetVertexArray(geometry.GetVertexData(), geometry.GetVertexDataSize());
        const corners = api.GetIndexArray(geometry.GetIndexData(), geometry.GetIndexDataSize());
        addTriangles(body, numbers, corners, placed.flatTransformation);
        geometry.delete();
    }
    return body;
}

/// Corners as they stand in the world, millimetres, z up: web-ifc turns y up and tells metres.
function cornerOf(numbers, corner, matrix) {
    const [x, y, z] = numbers.subarray(6 * corner, 6 * corner + 3); // a place and a normal each
    const at = [0, 1, 2].map(i => matrix[i] * x + matrix[4 + i] * y + matrix[8 + i] * z + matrix[12 + i]);
    return [at[0] * mmPerM, -at[2] * mmPerM, at[1] * mmPerM];
}

function addTriangles(body, numbers, corners, matrix) {
    const origin = cornerOf(numbers, corners[0], matrix).map(v => v + offOfWood);
    for (let i = 0; i < corners.length; i += 3) {
        const [a, b, c] = [0, 1, 2].map(j => cornerOf(numbers, corners[i + j], matrix).map((v, k) => v - origin[k]));
        body.volume += (a[0] * (b[1] * c[2] - b[2] * c[1]) + a[1] * (b[2] * c[0] - b[0] * c[2]) +
                        a[2] * (b[0] * c[1] - b[1] * c[0])) / 6;
        for (const corner of [a, b, c])
            for (let k = 0; k < 3; ++k) {
                body.low[k] = Math.min(body.low[k], corner[k] + origin[k]);
                body.high[k] = Math.max(body.high[k], corner[k] + origin[k]);
            }
    }
}


/// What is wrong with a file, a sentence each.
function faultsOf(api, bytes, wanted) {
    const model = api.OpenModel(bytes, {COORDINATE_TO_ORIGIN: false, CIRCLE_SEGMENTS: sides + 1}); // it counts the end too
    const faults = [], seen = new Set();
    const take = mesh => {
        const element = wanted.elements[mesh.expressID];
        if (!element || seen.has(mesh.expressID)) faults.push(`#${mesh.expressID} is there, and not wanted`);
        else faults.push(...faultsOfElement(api, model, mesh, element));
        seen.add(mesh.expressID);
    };
    api.StreamAllMeshes(model, take);
    api.StreamAllMeshesWithTypes(model, [webIfc.IFCOPENINGELEMENT], take); // as boxes alone they are none
    for (const [id, element] of Object.entries(wanted.elements))
        if (!seen.has(Number(id))) faults.push(`${element.type} ${element.name} has no body`);
    for (const [type, count] of Object.entries(wanted.counts)) {
        const found = api.GetLineIDsWithType(model, webIfc[type]).size();
        if (found !== count) faults.push(`${found} of ${count} ${type}`);
    }
    api.CloseModel(model);
    return faults;
}

function faultsOfElement(api, model, mesh, element) {
    const faults = [], body = bodyOf(api, model, mesh), line = api.GetLine(model, mesh.expressID);
    const isRound = element.type === 'IFCMECHANICALFASTENER' && !element.square;
    const wanted = element.volume * (isRound ? ofCircle : 1);
    if (!(Math.abs(body.volume / wanted - 1) < exact))
        faults.push(`${element.name} is of ${body.volume} mm3 instead of ${wanted}`);
    if (webIfc[element.type] !== line.type || line.Name.value !== element.name)
        faults.push(`${element.type} ${element.name} is read as ${line.Name.value}`);
    const room = samePlace + (isRound ? line.NominalDiameter.value * 0.01 : 0);
    [body.low, body.high].forEach((corner, end) => corner.forEach((v, k) => {
        if (!(Math.abs(v - element.box[end][k]) < room)) faults.push(`${element.name} reaches to ${v}, not ${element.box[end][k]}`);
    }));
    return faults;
}

/// Ways to break a file that must be found.
const breaks = {
    'a log less': text => text.replace(/=IFCMEMBER\(/, '=IFCPROXYLESS('),
    'a corner moved by half a millimetre': text => moved(text, 0.5),
    'a face less': text => text.replace(/(=IFCCLOSEDSHELL\(\()#\d+,/, '$1'),
    'a wall turned': text => text.replace(/=IFCDIRECTION\(\(-1\.,0\.,0\.\)\)/, '=IFCDIRECTION((1.,0.,0.))'),
    'centimetres': text => text.replace('.MILLI.', '.CENTI.'),
    'a storey higher': text => text.replace(/IFCCARTESIANPOINT\(\(0\.,0\.,1244\./, 'IFCCARTESIANPOINT((0.,0.,1344.'),
    'another name': text => text.replace(/(=IFCMEMBER\('[^']*',[^,]*,')A/, '$1X'),
    'a shorter peg': text => text.replace(/(=IFCEXTRUDEDAREASOLID\([^;]*,)(\d+)\.?\d*\)/, '$15.)'),
    'a wall for a member': text => text.replace(/=IFCMEMBER\(/, '=IFCWALL('),
};

/// The first corner of the first face of the first log.
function moved(text, by) {
    const loop = text.match(/=IFCPOLYLOOP\(\(#(\d+)/)[1];
    return text.replace(new RegExp(`(\n#${loop}=IFCCARTESIANPOINT\\(\\()([-0-9.E]+)`), (_, head, x) => head + (Number(x) + by));
}

function prove(api, bytes, wanted) {
    const text = Buffer.from(bytes).toString('latin1'), missed = [];
    for (const [name, way] of Object.entries(breaks)) {
        const broken = way(text);
        let faults = ['not read at all'];
        try {
            faults = faultsOf(api, new Uint8Array(Buffer.from(broken, 'latin1')), wanted);
        } catch (error) {
            console.log(`  ${name}: ${error}`);
        }
        if (broken === text || faults.length === 0) missed.push(`${name} was not found`);
    }
    return missed;
}

async function main(folder) {
    const api = new webIfc.IfcAPI();
    await api.Init();
    api.SetLogLevel(webIfc.LogLevel.LOG_LEVEL_ERROR);
    let wrong = 0, elements = 0, houses = 0;
    for (const name of fs.readdirSync(folder).filter(each => each.endsWith('.json'))) {
        const house = name.slice(0, -'.json'.length), wanted = JSON.parse(fs.readFileSync(path.join(folder, name)));
        const bytes = new Uint8Array(fs.readFileSync(path.join(folder, house, 'shell.ifc')));
        const faults = faultsOf(api, bytes, wanted);
        if (house === 'one-room floored') faults.push(...prove(api, bytes, wanted));
        console.log(`${house}: ${Object.keys(wanted.elements).length} bodies, ${faults.length} wrong`);
        for (const fault of faults.slice(0, 20)) console.log(`  ${fault}`);
        elements += Object.keys(wanted.elements).length;
        wrong += faults.length;
        ++houses;
    }
    console.log(`${houses} houses, ${elements} bodies, ${Object.keys(breaks).length} breaks, ${wrong} wrong`);
    process.exitCode = wrong === 0 && houses > 9 ? 0 : 1;
}

main(process.argv[2]);
