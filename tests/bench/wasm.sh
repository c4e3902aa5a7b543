#!/usr/bin/env bash
# Times the sums in Node's WebAssembly engine, which is that of Chromium, beside the same sums native.
set -euo pipefail
CDPATH='' cd -- "$(dirname -- "$0")/../.."
rustup target add wasm32-wasip1
cargo build -q --release -p wellwright-core --example timed --target wasm32-wasip1
built=$(cargo metadata --no-deps --format-version 1 | node -p 'JSON.parse(require("fs").readFileSync(0)).target_directory')
echo "WebAssembly:"
node --no-warnings tests/bench/wasi.mjs "$built/wasm32-wasip1/release/examples/timed.wasm"
echo "Native:"
cargo run -q --release -p wellwright-core --example timed
