# Read by app/run and tests/run: what is needed by its Debian name, how it is installed, and how a build is made.

run_packages=(libqt6quickcontrols2-6 qml6-module-qtquick qml6-module-qtquick-controls qml6-module-qtquick-layouts
  qml6-module-qtquick-templates qml6-module-qtquick-window qml6-module-qtqml qml6-module-qtqml-workerscript
  fonts-dejavu-core fonts-inter libsqlite3-0 libsodium23 libutf8proc2 libnlopt0)
build_packages=(g++ cmake ninja-build ccache pkg-config qt6-base-dev qt6-declarative-dev qt6-l10n-tools libgl-dev libboost-dev libsqlite3-dev
  libsqlitecpp-dev nlohmann-json3-dev libcli11-dev libsodium-dev libutf8proc-dev libeigen3-dev libnlopt-dev libnlopt-cxx-dev)
check_packages=(catch2 poppler-utils qml6-module-qttest qt6-declarative-dev-tools python3
  r-base-core r-cran-lme4 r-cran-lmertest r-cran-ordinal r-cran-multcomp python3-scipy)

say() { printf '%s\n' "$*"; }

# One clear sentence, and the end.
fail() {
  printf 'oddglass: %s\n' "$*" >&2
  exit 2
}

# Runs a step quietly. When it fails, the last it said comes out, and then the sentence.
step() {
  local sentence=$1 log
  shift
  log=$(mktemp)
  if ! "$@" >"$log" 2>&1; then
    tail -n 25 "$log" >&2
    rm -f "$log"
    fail "$sentence"
  fi
  rm -f "$log"
}

# Those of the named packages that are not installed.
missing() {
  local present
  present=$(dpkg-query -W -f='${Package} ${db:Status-Status}\n' "$@" 2>/dev/null | sed -n 's/ installed$//p' || true)
  comm -23 <(printf '%s\n' "$@" | sort -u) <(printf '%s\n' "$present" | sort -u)
}

# Installs what is missing. Only this needs rights: as root at once, else through sudo.
need() {
  [ -z "${packages_are_there:-}" ] || return 0
  command -v dpkg-query >/dev/null && command -v apt-get >/dev/null ||
    fail "this script installs what it needs on Debian 12; on another system install the packages named in app/setup.sh and build with CMake."
  local lacking
  mapfile -t lacking < <(missing "$@")
  if [ ${#lacking[@]} -eq 0 ]; then
    say "All $# packages that are needed are installed."
    return
  fi
  local rights=()
  if [ "$(id -u)" -ne 0 ]; then
    command -v sudo >/dev/null || fail "these packages are missing and there is no sudo; ask whoever has root to run: apt-get install ${lacking[*]}"
    rights=(sudo)
    say "Installing needs root; sudo may ask for your password."
    sudo -v || fail "sudo did not allow the installation; ask whoever has root to run: apt-get install ${lacking[*]}"
  fi
  say "Installing ${#lacking[@]} packages: ${lacking[*]}"
  local apt=("${rights[@]}" env DEBIAN_FRONTEND=noninteractive apt-get -q -y -o DPkg::Lock::Timeout=300)
  step "the list of packages could not be fetched; is this machine online?" "${apt[@]}" update
  step "a package could not be installed; what apt-get said stands above." "${apt[@]}" install --no-install-recommends "${lacking[@]}"
}

# Under "sudo app/run" only the installation stays with root: everything after it belongs to whoever typed the command.
as_the_user() {
  [ "$(id -u)" -eq 0 ] && [ -n "${SUDO_USER:-}" ] && [ "$SUDO_USER" != root ] || return 0
  local home uid
  home=$(getent passwd "$SUDO_USER" | cut -d: -f6)
  uid=$(id -u "$SUDO_USER")
  local with=(packages_are_there=yes HOME="$home" USER="$SUDO_USER" LOGNAME="$SUDO_USER")
  if [ -d "/run/user/$uid" ]; then with+=(XDG_RUNTIME_DIR="/run/user/$uid"); fi
  say "Going on as $SUDO_USER."
  exec runuser -u "$SUDO_USER" -- env -u SUDO_USER "${with[@]}" "$@"
}

# build PRESET [cmake options] -- [targets]: configures where it was not yet (or with options), and builds. On a terminal the compiler's progress shows.
build() {
  local preset=$1 options=() targets=()
  shift
  while [ $# -gt 0 ] && [ "$1" != -- ]; do options+=("$1"); shift; done
  [ $# -eq 0 ] || shift
  [ $# -eq 0 ] || targets=(--target "$@")
  mkdir -p "build/$preset" 2>/dev/null && [ -w "build/$preset" ] ||
    fail "the folder build/$preset cannot be written by $(id -un); it may have been made by root: remove it, or run this as its owner."
  if [ ! -f "build/$preset/build.ninja" ] || [ ${#options[@]} -gt 0 ]; then
    say "Configuring build/$preset."
    step "the build could not be configured; what CMake said stands above." cmake --preset "$preset" "${options[@]}"
  fi
  # What was compiled in another checkout of this project is found again.
  export CCACHE_BASEDIR=$PWD CCACHE_NOHASHDIR=1
  say "Building in build/$preset (the first time takes some minutes)."
  local make=(cmake --build "build/$preset" "${targets[@]}")
  if [ -t 1 ]; then
    "${make[@]}" || fail "the build failed; the first error stands above."
  else
    step "the build failed; the end of what the compiler said stands above." "${make[@]}"
  fi
}
