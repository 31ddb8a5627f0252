#!/usr/bin/env bash
# Puts the wasm32-unknown-unknown standard library into the sysroot of the rustc on PATH, on a machine
# without access to rustup's server. Does nothing where it's there already. Needs: apt, dpkg, cargo.
# It never calls rustup: a std from rustup beside this one breaks every build (E0464, multiple candidates).
set -euo pipefail
RUST=1.95.0
DEB="rust-src=${RUST}+dfsg1-2~bpo13+1" SHA=7b76db5b880a77f9e52975d2baa6209d2f76d2c9c2789515c3088cb960e2c83b
SUITE=trixie-backports

[ "$(rustc -V | cut -d' ' -f2)" = "$RUST" ] || { echo "rustc must be $RUST, found $(rustc -V)" >&2; exit 1; }
root=$(rustc --print sysroot)
dest=$root/lib/rustlib/wasm32-unknown-unknown/lib
ls "$dest"/libstd-*.rlib >/dev/null 2>&1 && exit 0

work=$(mktemp -d); trap 'rm -rf "$work"' EXIT
mkdir -p "$work"/{lists/partial,cache/archives/partial,deb,std/src}
# the mirror and the key that this machine's own sources use
mirror=$(cat /etc/apt/sources.list /etc/apt/sources.list.d/*.{list,sources} 2>/dev/null |
  grep -oE '^(URIs:|deb) .*' | grep -oE 'https?://[^ ]+/debian/?( |$)' | head -n1 || true)
[ -n "$mirror" ] || { echo "no Debian mirror found in apt's sources" >&2; exit 1; }
echo "deb [signed-by=/usr/share/keyrings/debian-archive-keyring.gpg] $mirror $SUITE main" > "$work/s.list"
apt=(apt-get -qq -o "Dir::Etc::sourcelist=$work/s.list" -o Dir::Etc::sourceparts=/dev/null -o "Dir::State::lists=$work/lists" -o "Dir::Cache=$work/cache" -o APT::Sandbox::User=root)
"${apt[@]}" update
(cd "$work/deb" && "${apt[@]}" download "$DEB" && echo "$SHA  $(ls ./*.deb)" | sha256sum -c --quiet && dpkg -x ./*.deb x)
if [ ! -d "$root/lib/rustlib/src/rust/library" ]; then # build-std looks for the sources here
  mkdir -p "$root/lib/rustlib/src/rust"
  cp -r "$work/deb/x/usr/src/rustc-$RUST/library" "$root/lib/rustlib/src/rust/library"
fi
printf '[package]\nname = "empty_std"\nversion = "0.0.0"\nedition = "2021"\n[workspace]\n' > "$work/std/Cargo.toml"
echo '#![no_std]' > "$work/std/src/lib.rs"
(cd "$work/std" && RUSTC_BOOTSTRAP=1 RUSTFLAGS="-Cembed-bitcode=yes --remap-path-prefix=$root/lib/rustlib/src/rust=/rust --remap-path-prefix=${CARGO_HOME:-$HOME/.cargo}/registry/src=/crates" \
  cargo build --release -Zbuild-std=std,panic_abort,test --target wasm32-unknown-unknown --target-dir "$work/t")
mkdir -p "$dest"
find "$work/t/wasm32-unknown-unknown/release/deps" -name '*.rlib' ! -name 'libempty_std-*' -exec cp {} "$dest"/ \;
