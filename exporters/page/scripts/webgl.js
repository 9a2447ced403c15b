
// --- drawn by the graphics processor ---

const wood_vertex = `
attribute vec3 place; attribute vec3 normal; attribute vec3 colour;
uniform mat4 matrix; uniform vec3 light; uniform vec4 tint;
varying vec3 shade;
void main() {
    gl_Position = matrix * vec4(place, 1.0);
    vec3 n = normalize(normal);
    float lit = 0.62 + 0.26 * dot(n, light) + 0.12 * n.z;
    shade = mix(colour, tint.rgb, tint.a) * lit;
}`;
const wood_fragment = `
precision mediump float;
varying vec3 shade; uniform float opacity;
void main() { gl_FragColor = vec4(shade, 1.0) * opacity; }`;
const edge_vertex = `
attribute vec3 place; uniform mat4 matrix;
void main() { gl_Position = matrix * vec4(place, 1.0); gl_Position.z -= 0.0004 * gl_Position.w; }`;
const edge_fragment = `
precision mediump float; uniform vec4 ink;
void main() { gl_FragColor = vec4(ink.rgb, 1.0) * ink.a; }`;

function program_of(gl, vertex, fragment, attributes) {
    const program = gl.createProgram();
    for (const [kind, text] of [[gl.VERTEX_SHADER, vertex], [gl.FRAGMENT_SHADER, fragment]]) {
        const shader = gl.createShader(kind);
        gl.shaderSource(shader, text);
        gl.compileShader(shader);
        gl.attachShader(program, shader);
    }
    attributes.forEach((name, i) => gl.bindAttribLocation(program, i, name));
    gl.linkProgram(program);
    if (!gl.getProgramParameter(program, gl.LINK_STATUS)) throw new Error(gl.getProgramInfoLog(program));
    return {program, at: (name) => gl.getUniformLocation(program, name)};
}

function buffer_of(gl, kind, data) {
    const buffer = gl.createBuffer();
    gl.bindBuffer(kind, buffer);
    gl.bufferData(kind, data, gl.STATIC_DRAW);
    return buffer;
}

class WebGlPainter {
    /// Throws where the browser has no WebGL that is enough.
    constructor(canvas, shell) {
        const is_coarse = (window.devicePixelRatio || 1) < 2; // fine dots need no smoothing, and that is dear
        const gl = canvas.getContext("webgl", {antialias: is_coarse, alpha: false});
        if (!gl || !gl.getExtension("OES_element_index_uint")) throw new Error("no WebGL");
        this.gl = gl, this.shell = shell, this.canvas = canvas;
        this.wood = program_of(gl, wood_vertex, wood_fragment, ["place", "normal", "colour"]);
        this.edge = program_of(gl, edge_vertex, edge_fragment, ["place"]);
        this.points = buffer_of(gl, gl.ARRAY_BUFFER, shell.points);
        this.normals = buffer_of(gl, gl.ARRAY_BUFFER, shell.normals);
        this.colours = buffer_of(gl, gl.ARRAY_BUFFER, shell.colours);
        this.ends = buffer_of(gl, gl.ARRAY_BUFFER, shell.ends);
        this.triangles = buffer_of(gl, gl.ELEMENT_ARRAY_BUFFER, shell.triangles);
        gl.enable(gl.DEPTH_TEST);
        gl.depthFunc(gl.LEQUAL);
        gl.blendFunc(gl.ONE, gl.ONE_MINUS_SRC_ALPHA);
    }

    attribute(place, buffer, kind, size, normalised, stride) {
        const gl = this.gl;
        gl.bindBuffer(gl.ARRAY_BUFFER, buffer);
        gl.enableVertexAttribArray(place);
        gl.vertexAttribPointer(place, size, kind, normalised, stride, 0);
    }

    /// `seen`: {triangles, ends} of the shell that are drawn from the first on; `chosen`: ranges of logs that are marked.
    draw(camera, seen, chosen, look) {
        const gl = this.gl, matrix = camera.matrix();
        gl.viewport(0, 0, this.canvas.width, this.canvas.height);
        gl.clearColor(...look.ground, 1);
        gl.clear(gl.COLOR_BUFFER_BIT | gl.DEPTH_BUFFER_BIT);
        this.draw_wood(camera, matrix, seen, chosen, look);
        this.draw_edges(matrix, seen, look);
    }

    draw_wood(camera, matrix, seen, chosen, look) {
        const gl = this.gl, {back, up} = camera.axes();
        const light = [0, 1, 2].map((i) => 0.8 * back[i] + 0.6 * up[i]);
        gl.useProgram(this.wood.program);
        gl.uniformMatrix4fv(this.wood.at("matrix"), false, matrix);
        gl.uniform3fv(this.wood.at("light"), light);
        this.attribute(0, this.points, gl.FLOAT, 3, false, 12);
        this.attribute(1, this.normals, gl.BYTE, 3, true, 4);
        this.attribute(2, this.colours, gl.UNSIGNED_BYTE, 3, true, 4);
        gl.bindBuffer(gl.ELEMENT_ARRAY_BUFFER, this.triangles);
        const stretch = (first, end, tint, opacity) => {
            gl.uniform4fv(this.wood.at("tint"), tint);
            gl.uniform1f(this.wood.at("opacity"), opacity);
            gl.drawElements(gl.TRIANGLES, end - first, gl.UNSIGNED_INT, 4 * first);
        };
        stretch(0, seen.triangles, [0, 0, 0, 0], 1);
        for (const range of chosen) stretch(range.triangle, range.triangles_end, [...look.chosen, 0.85], 1);
        gl.disable(gl.DEPTH_TEST), gl.enable(gl.BLEND); // through what lies before it as well
        for (const range of chosen) stretch(range.triangle, range.triangles_end, [...look.chosen, 0.85], 0.3);
        gl.enable(gl.DEPTH_TEST), gl.disable(gl.BLEND);
        gl.disableVertexAttribArray(1), gl.disableVertexAttribArray(2);
    }

    draw_edges(matrix, seen, look) {
        const gl = this.gl;
        gl.useProgram(this.edge.program);
        gl.uniformMatrix4fv(this.edge.at("matrix"), false, matrix);
        gl.uniform4fv(this.edge.at("ink"), [...look.edge, 1]);
        this.attribute(0, this.ends, gl.FLOAT, 3, false, 12);
        gl.drawArrays(gl.LINES, 0, seen.ends);
    }
}
