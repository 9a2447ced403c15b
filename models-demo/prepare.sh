# Sourced by models-demo/run and tests/run: packages and build. Needs $root, the project's folder.
# shellcheck shell=sh

build="${root:?}/build/release"

say() { printf '%s\n' "$*" >&2; }

# wanted_packages KIND...: names from models-demo/packages of these kinds, for this release of Debian.
wanted_packages() {
    release=$(. /etc/os-release 2>/dev/null && printf '%s' "${VERSION_CODENAME:-}")
    awk -v kinds=" $* " -v release="$release" '
        /^#/ || NF < 2 || !index(kinds, " " $2 " ") { next }
        NF == 2 { print $1; next }
        { for (i = 3; i <= NF; ++i) if ($i == release) print $1 }' "$root/models-demo/packages"
}

# missing_packages NAME...: those that are not installed.
missing_packages() {
    installed=$(dpkg-query -W -f '${db:Status-Status} ${Package}\n' "$@" 2>/dev/null | awk '$1 == "installed" { print $2 }')
    for name in "$@"; do
        printf '%s\n' "$installed" | grep -qxF -e "$name" || printf '%s\n' "$name"
    done
}

as_root() {
    if [ "$(id -u)" -eq 0 ]; then "$@"; else sudo "$@"; fi
}

# need KIND...: installs what is missing.
need() {
    if ! command -v dpkg-query >/dev/null 2>&1; then
        say "This is no Debian: install what models-demo/packages lists in your system's own way."
        return 0
    fi
    # Names of packages hold no blanks.
    # shellcheck disable=SC2046
    missing=$(missing_packages $(wanted_packages "$@"))
    [ -n "$missing" ] || return 0
    # shellcheck disable=SC2086
    set -- $missing
    say "Installing: $*"
    if [ "$(id -u)" -ne 0 ] && ! command -v sudo >/dev/null 2>&1; then
        say "There is neither root nor sudo here. As root, run: apt-get install $*"
        return 1
    fi
    as_root env DEBIAN_FRONTEND=noninteractive apt-get update -q >&2
    as_root env DEBIAN_FRONTEND=noninteractive apt-get install -q -y --no-install-recommends "$@" >&2
}

# How many compilers at a time: one each processor, and no more than memory holds at 1.5 GB each.
jobs_here() {
    awk -v processors="$(nproc)" '
        $1 == "MemAvailable:" { room = int($2 / 1500000) }
        END { if (room < 1) room = 1; print room < processors ? room : processors }' /proc/meminfo
}

# has_target NAME: whether what is configured can build it.
has_target() {
    ninja -C "$build" -t query "$1" >/dev/null 2>&1
}

# configure TESTS: ON or OFF. An ON of before is kept: the tests' programs are only built when asked for. A folder that
# was configured while Qt was missing is configured again.
configure() {
    if [ -f "$build/build.ninja" ] && [ -f "$build/CMakeCache.txt" ]; then
        if grep -qx 'ROUNDLAY_TESTS:BOOL=ON' "$build/CMakeCache.txt"; then
            set -- ON
        elif [ "$1" = ON ]; then
            (cd "$root" && cmake --preset release -DROUNDLAY_TESTS=ON) >&2
            return
        fi
        if has_target roundlay-modeler; then return 0; fi
    fi
    (cd "$root" && cmake --preset release -DROUNDLAY_TESTS="$1") >&2
}

# build TARGET...: of preset release.
build() {
    ninja -C "$build" -j "$(jobs_here)" "$@" >&2
}
