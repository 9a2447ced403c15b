
// --- meshes: one for each distinct log, and where each log lies ---

/// As packed_meshes.cpp writes them: corners in mm of the log's own frame.
function read_meshes(bytes) {
    const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength), meshes = [];
    let at = 0;
    const places = (count, low, size) => {
        const points = new Float32Array(3 * count);
        for (let i = 0; i < points.length; ++i, at += 2) points[i] = low[i % 3] + view.getUint16(at, true) / 65535 * size[i % 3];
        return points;
    };
    const numbers = (count) => {
        const all = new Uint32Array(count);
        for (let i = 0; i < count; ++i, at += 4) all[i] = view.getUint32(at, true);
        return all;
    };
    const three = () => [0, 1, 2].map(() => { at += 4; return view.getFloat32(at - 4, true); });
    while (at < bytes.length) {
        const low = three(), size = three(), [corners, triangles, ends, edges] = numbers(4);
        const mesh = {low, high: low.map((l, i) => l + size[i]), corners: places(corners, low, size)};
        mesh.normals = new Int8Array(3 * corners);
        for (let i = 0; i < mesh.normals.length; ++i) mesh.normals[i] = view.getInt8(at++);
        mesh.triangles = numbers(3 * triangles);
        mesh.ends = places(ends, low, size);
        mesh.edges = numbers(2 * edges);
        meshes.push(mesh);
    }
    return meshes;
}

/// `at`: origin and the three axes of a log's frame, twelve numbers.
function to_world(at, x, y, z) {
    return [at[0] + x * at[3] + y * at[6] + z * at[9], at[1] + x * at[4] + y * at[7] + z * at[10], at[2] + x * at[5] + y * at[8] + z * at[11]];
}
function turned_to_world(at, x, y, z) {
    return [x * at[3] + y * at[6] + z * at[9], x * at[4] + y * at[7] + z * at[10], x * at[5] + y * at[8] + z * at[11]];
}
function turned_to_log(at, [x, y, z]) {
    return [x * at[3] + y * at[4] + z * at[5], x * at[6] + y * at[7] + z * at[8], x * at[9] + y * at[10] + z * at[11]];
}

/// All logs in one frame, those of each step of the raise behind those of the step before, so that any beginning of the raise is a
/// beginning of the lists. `first` and `last` say where the log's own triangles and edges stand, in corners of them.
function shell_of(logs, meshes, parts, order) {
    let corners = 0, triangles = 0, ends = 0;
    for (const log of logs) {
        const mesh = meshes[log.model];
        corners += mesh.corners.length / 3, triangles += mesh.triangles.length, ends += mesh.edges.length;
    }
    const shell = {points: new Float32Array(3 * corners), normals: new Int8Array(4 * corners), colours: new Uint8Array(4 * corners),
        triangles: new Uint32Array(triangles), ends: new Float32Array(3 * ends), ranges: []};
    const at = {corner: 0, triangle: 0, end: 0};
    for (const index of order) shell.ranges[index] = lay_log(shell, logs[index], meshes[logs[index].model], parts[logs[index].part][1], at);
    return shell;
}

function lay_log(shell, log, mesh, colour, at) {
    const range = {triangle: at.triangle, end: at.end}, first = at.corner;
    const rgb = [1, 3, 5].map((i) => parseInt(colour.substr(i, 2), 16));
    for (let i = 0; i < mesh.corners.length; i += 3, ++at.corner) {
        shell.points.set(to_world(log.at, mesh.corners[i], mesh.corners[i + 1], mesh.corners[i + 2]), 3 * at.corner);
        shell.normals.set(turned_to_world(log.at, mesh.normals[i], mesh.normals[i + 1], mesh.normals[i + 2]).map(Math.round), 4 * at.corner);
        shell.colours.set(rgb, 4 * at.corner);
    }
    for (const corner of mesh.triangles) shell.triangles[at.triangle++] = first + corner;
    for (const end of mesh.edges)
        shell.ends.set(to_world(log.at, mesh.ends[3 * end], mesh.ends[3 * end + 1], mesh.ends[3 * end + 2]), 3 * at.end++);
    return {...range, triangles_end: at.triangle, ends_end: at.end};
}

/// How far along the ray the log is met; Infinity where it is not. `from` and `way` in the world.
function ray_meets(log, mesh, from, way) {
    const o = turned_to_log(log.at, [from[0] - log.at[0], from[1] - log.at[1], from[2] - log.at[2]]), d = turned_to_log(log.at, way);
    let near = 0, far = Infinity;
    for (let i = 0; i < 3; ++i) {
        const a = (mesh.low[i] - o[i]) / d[i], b = (mesh.high[i] - o[i]) / d[i];
        if (d[i] === 0 && (o[i] < mesh.low[i] || o[i] > mesh.high[i])) return Infinity;
        if (d[i] !== 0) near = Math.max(near, Math.min(a, b)), far = Math.min(far, Math.max(a, b));
    }
    if (near > far) return Infinity;
    let nearest = Infinity;
    for (let i = 0; i < mesh.triangles.length; i += 3) nearest = Math.min(nearest, meets_triangle(mesh, i, o, d));
    return nearest;
}

function meets_triangle({corners, triangles}, at, o, d) {
    const a = 3 * triangles[at], b = 3 * triangles[at + 1], c = 3 * triangles[at + 2];
    const ux = corners[b] - corners[a], uy = corners[b + 1] - corners[a + 1], uz = corners[b + 2] - corners[a + 2];
    const vx = corners[c] - corners[a], vy = corners[c + 1] - corners[a + 1], vz = corners[c + 2] - corners[a + 2];
    const px = d[1] * vz - d[2] * vy, py = d[2] * vx - d[0] * vz, pz = d[0] * vy - d[1] * vx;
    const det = ux * px + uy * py + uz * pz;
    if (det <= 0) return Infinity; // seen from behind
    const sx = o[0] - corners[a], sy = o[1] - corners[a + 1], sz = o[2] - corners[a + 2];
    const s = (sx * px + sy * py + sz * pz) / det;
    if (s < 0 || s > 1) return Infinity;
    const qx = sy * uz - sz * uy, qy = sz * ux - sx * uz, qz = sx * uy - sy * ux;
    const t = (d[0] * qx + d[1] * qy + d[2] * qz) / det;
    if (t < 0 || s + t > 1) return Infinity;
    const along = (vx * qx + vy * qy + vz * qz) / det;
    return along > 0 ? along : Infinity;
}
