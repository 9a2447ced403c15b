#include "exporters/picture/frame.h"

#include <algorithm>
#include <array>

namespace roundlay {

const char *const everywhere_vertex = R"(
out vec2 place;
void main() {
    vec2 corner = vec2(gl_VertexID == 1 ? 3.0 : -1.0, gl_VertexID == 2 ? 3.0 : -1.0);
    place = 0.5 + 0.5 * corner;
    gl_Position = vec4(corner, 0, 1);
}
)";

Matrix4 shifted(const Matrix4 &from_world, Vec3 origin) {
    Matrix4 m = from_world;
    const auto moved = transformed(from_world, origin);
    for (int row = 0; row < 4; ++row)
        m(row, 3) = moved[static_cast<std::size_t>(row)];
    return m;
}

namespace {

void swap_rows(Matrix4 &m, int a, int b) {
    for (int k = 0; k < 4; ++k)
        std::swap(m(a, k), m(b, k));
}

/// Row `to` becomes row `to` + by * row `from`.
void add_row(Matrix4 &m, int to, int from, double by) {
    for (int k = 0; k < 4; ++k)
        m(to, k) += by * m(from, k);
}

void scale_row(Matrix4 &m, int row, double by) {
    for (int k = 0; k < 4; ++k)
        m(row, k) *= by;
}

} // namespace

Matrix4 inverse(Matrix4 a) {
    Matrix4 out;
    for (int i = 0; i < 4; ++i)
        out(i, i) = 1;
    for (int column = 0; column < 4; ++column) {
        int pivot = column; // the largest, so that little is lost
        for (int row = column + 1; row < 4; ++row)
            if (std::abs(a(row, column)) > std::abs(a(pivot, column))) pivot = row;
        swap_rows(a, column, pivot);
        swap_rows(out, column, pivot);
        const double by = 1 / a(column, column);
        scale_row(a, column, by);
        scale_row(out, column, by);
        for (int row = 0; row < 4; ++row) {
            const double times = a(row, column);
            if (row == column || times == 0) continue;
            add_row(a, row, column, -times);
            add_row(out, row, column, -times);
        }
    }
    return out;
}

void set_uniform(GLint at, const Matrix4 &matrix) {
    std::array<float, 16> single{};
    std::transform(matrix.m.begin(), matrix.m.end(), single.begin(),
                   [](double v) { return static_cast<float>(v); });
    glUniformMatrix4fv(at, 1, GL_FALSE, single.data());
}

void set_uniform(GLint at, Vec3 v) {
    glUniform3f(at, static_cast<float>(v.x), static_cast<float>(v.y), static_cast<float>(v.z));
}

void set_section(GLint at, const std::optional<Plane> &section, Vec3 origin) {
    const Plane plane = section.value_or(Plane{{0, 0, 0}, 0});
    const double offset = plane.offset - dot(plane.normal, origin);
    glUniform4f(at, static_cast<float>(plane.normal.x), static_cast<float>(plane.normal.y),
                static_cast<float>(plane.normal.z), static_cast<float>(offset));
}

} // namespace roundlay
