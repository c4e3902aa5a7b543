# shellcheck shell=bash
# Finds the tools of the project and installs those that are missing.
# Sourced by app/serve, tests/run and .ci/run, which run from the project's top folder.
# What cargo installs goes to a cache folder of the user's, named by version.

trunk_version=0.21.14
geckodriver_version=0.37.1
deny_version=0.20.2
nextest_version=0.9.143
coverage_version=0.9.1
mutants_version=27.1.0
tools=${WELLWRIGHT_TOOLS:-${XDG_CACHE_HOME:-$HOME/.cache}/wellwright}

say() { printf '==> %s\n' "$*"; }

fail() {
  printf 'error: %s\n' "$*" >&2
  exit 1
}

has() { command -v "$1" >/dev/null 2>&1; }

as_root() {
  if [ "$(id -u)" = 0 ]; then "$@"
  elif [ -t 0 ]; then sudo "$@"
  else sudo -n "$@"
  fi
}

has_apt() { has apt-get && { [ "$(id -u)" = 0 ] || has sudo; }; }

apt_update() {
  [ -z "${apt_updated:-}" ] || return 0
  say "Reading the list of apt's packages (some seconds)"
  as_root apt-get update -qq || fail "apt-get update failed."
  apt_updated=1
}

# apt_install WHAT TIME PACKAGE...
apt_install() {
  local what=$1 time=$2
  shift 2
  has_apt || fail "$what is missing. Install it with your system's package manager, then run this again."
  apt_update
  say "Installing $what with apt ($time)"
  as_root env DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends "$@" >/dev/null ||
    fail "apt could not install $what."
}

# not_older MINIMUM VERSION
not_older() { [ "$(printf '%s\n' "$1" "$2" | sort -V | head -n 1)" = "$1" ]; }

need_c_compiler() {
  if [ "$(uname)" = Darwin ]; then
    xcode-select -p >/dev/null 2>&1 || fail "A C compiler is missing. Run: xcode-select --install"
  else
    has cc || apt_install "a C compiler" "about 20 seconds" build-essential
  fi
}

need_rust() {
  local want have
  PATH=$PATH:${CARGO_HOME:-$HOME/.cargo}/bin
  if ! cargo --version >/dev/null 2>&1; then
    has rustup || install_rustup
    say "Installing Rust's stable toolchain with rustup (about 1 minute)"
    rustup default stable || fail "rustup could not install the stable toolchain."
  fi
  want=$(sed -n 's/^rust-version = "\(.*\)"/\1/p' Cargo.toml)
  have=$(rustc --version | cut -d ' ' -f 2)
  not_older "$want" "$have" || fail "Rust $want or newer is needed, this is $have. Run: rustup update stable"
}

install_rustup() {
  has_apt && apt_update
  if ! has_apt || ! apt-cache policy rustup | grep -q 'Candidate: [0-9]'; then
    fail "Rust is missing. Install rustup as https://rustup.rs says, then run this again."
  fi
  apt_install "rustup" "about 10 seconds" rustup
}

need_wasm_target() {
  local target=wasm32-unknown-unknown
  ls "$(rustc --print target-libdir --target $target)"/libstd-*.rlib >/dev/null 2>&1 && return
  has rustup || fail "Rust's library for $target is missing, and rustup, which installs it, is not there."
  say "Installing Rust's library for $target (some seconds)"
  rustup target add $target || fail "rustup could not add $target."
}

# need_node MINIMUM
need_node() {
  has node || apt_install "Node" "about 20 seconds" nodejs
  has npm || apt_install "npm" "about 1 minute" npm
  not_older "$1" "$(node --version | tr -d v)" ||
    fail "Node $1 or newer is needed, this is $(node --version). Install a newer one, then run this again."
}

# need_npm_packages FOLDER TIME: installs what FOLDER/package-lock.json names.
need_npm_packages() {
  [ "$1/package-lock.json" -nt "$1/node_modules/.package-lock.json" ] || return 0
  say "Installing the npm packages of $1 ($2)"
  (cd "$1" && npm ci --include=dev --loglevel=error) || fail "npm could not install the packages of $1."
}

# need_python_packages LIST TIME: sets PYTHON to an interpreter that has the packages of the list, in an environment of its
# own that is kept beside the other tools, by what the list says.
need_python_packages() {
  local home
  if ! has python3 || ! python3 -c 'import ensurepip, venv' 2>/dev/null; then
    apt_install "Python" "about 20 seconds" python3 python3-venv
  fi
  home=$tools/python-$(cksum <"$1" | tr -d ' ')-$(python3 -c 'import platform; print(platform.python_version())')
  PYTHON=$home/bin/python
  [ -e "$home/whole" ] && return 0
  say "Installing the Python packages of $1 ($2)"
  rm -rf "$home"
  python3 -m venv "$home" || fail "python3 could not make an environment."
  "$PYTHON" -m pip install --quiet --disable-pip-version-check -r "$1" || fail "pip could not install the packages of $1."
  touch "$home/whole"
}

# Sets CHROMIUM to an installed Chromium or Chrome.
need_chromium() {
  local name
  if [ -z "${CHROMIUM:-}" ]; then
    for name in chromium chromium-browser google-chrome google-chrome-stable \
      "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome" \
      "/Applications/Chromium.app/Contents/MacOS/Chromium"; do
      if has "$name"; then
        CHROMIUM=$(command -v "$name")
        break
      fi
    done
  fi
  if [ -z "${CHROMIUM:-}" ]; then
    apt_install "Chromium and a font" "about 1 minute" chromium fonts-dejavu-core
    CHROMIUM=$(command -v chromium)
  fi
  has "$CHROMIUM" || fail "CHROMIUM is $CHROMIUM, which is no program."
  export CHROMIUM
}

# Sets ENGINES to the browsers of other engines that the tests can drive here, FIREFOX, GECKODRIVER and WEBKIT to their
# programs. With apt both are installed; elsewhere those that are there are taken, and what is missing is said.
need_engines() {
  local name
  ENGINES=
  if has_apt; then
    has firefox-esr || has firefox || apt_install "Firefox" "about 20 seconds" firefox-esr
    has WebKitWebDriver && has xvfb-run || apt_install "WebKitGTK and a screen for it" "about 20 seconds" webkit2gtk-driver xvfb xauth
  fi
  for name in firefox-esr firefox "/Applications/Firefox.app/Contents/MacOS/firefox"; do
    if has "$name"; then
      FIREFOX=$(command -v "$name")
      need_cargo_tool geckodriver geckodriver "$geckodriver_version" "about 2 minutes on two cores" --locked
      GECKODRIVER=$(command -v geckodriver)
      ENGINES=firefox
      break
    fi
  done
  WEBKIT=$(find /usr/lib /usr/libexec -path '*webkit2gtk-4*' -name MiniBrowser -type f 2>/dev/null | sort | tail -n 1)
  if [ -n "$WEBKIT" ] && has WebKitWebDriver && has xvfb-run; then ENGINES="$ENGINES webkit"; fi
  for name in firefox webkit; do
    case $ENGINES in *$name*) ;; *) say "There is no $name here that tests can drive: its journeys are left out" ;; esac
  done
  export ENGINES FIREFOX GECKODRIVER WEBKIT
}

# The version that Cargo.lock holds of a crate.
locked_version() {
  awk -v name="name = \"$1\"" '$0 == name { getline; gsub(/version = |"/, ""); print; exit }' Cargo.lock
}

# need_cargo_tool COMMAND CRATE VERSION TIME [FLAG...]
need_cargo_tool() {
  local command=$1 crate=$2 version=$3 time=$4 home=$tools/$2-$3
  shift 4
  [ "$("$command" --version 2>/dev/null | head -n 1 | cut -d ' ' -f 2)" != "$version" ] || return 0
  if [ ! -d "$home" ]; then
    say "Installing $crate $version ($time, once)"
    # Built fast, since it runs for seconds. The final name comes last: an interrupted install goes on where it stopped.
    CARGO_PROFILE_RELEASE_OPT_LEVEL=0 CARGO_PROFILE_RELEASE_LTO=off CARGO_PROFILE_RELEASE_CODEGEN_UNITS=16 \
      CARGO_PROFILE_RELEASE_DEBUG=false CARGO_TARGET_DIR=$home.part/target cargo install --quiet "$@" --version "$version" --root "$home.part" "$crate" ||
      fail "cargo could not install $crate $version."
    rm -rf "$home.part/target"
    mv "$home.part" "$home"
  fi
  PATH=$home/bin:$PATH
}

# Trunk takes wasm-bindgen and wasm-opt from PATH when their versions fit.
need_trunk() {
  need_cargo_tool trunk trunk "$trunk_version" "4 to 6 minutes on two cores" --locked
  need_cargo_tool wasm-bindgen wasm-bindgen-cli "$(locked_version wasm-bindgen)" "2 minutes on two cores"
  PATH=$PWD/app/node_modules/binaryen/bin:$PATH
}
