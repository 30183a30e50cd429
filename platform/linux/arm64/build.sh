#!/bin/sh
# The Debian package for 64-bit ARM, cross-compiled: makes the sysroot when it is missing, builds, runs the core's tests
# under emulation, starts the app off screen, packs. Made for Debian 12 on amd64; POSIX sh. Takes some 900 MB of disk.
#
#   sh platform/linux/arm64/build.sh
set -eu
cd "$(dirname "$0")/../../.."
. platform/packages.sh
need_packages run test cross

sysroot=${UNDERCOWL_SYSROOT:-$PWD/build/arm64-sysroot}
if ! test -e "$sysroot/made"; then
    rm -rf "$sysroot"
    mkdir -p build
    # The machine's own sources, the ARM half of them.
    cat /etc/apt/sources.list /etc/apt/sources.list.d/*.list /etc/apt/sources.list.d/*.sources 2>/dev/null |
        mmdebstrap --arch=arm64 --variant=extract \
            --include="$(echo $packages_run catch2 qml6-module-qttest | sed -e 's/build-essential cmake ninja-build pkg-config/libstdc++-12-dev/' -e 's/ /,/g')" \
            bookworm "$sysroot" -
    # Links that update-alternatives would make.
    for library in blas lapack; do
        ln -s "$library/lib$library.so.3" "$sysroot/usr/lib/aarch64-linux-gnu/"
    done
    # Absolute links would lead out of the sysroot.
    find "$sysroot/usr/lib" -type l -lname '/*' | while read -r link; do
        ln -sf "$sysroot$(readlink "$link")" "$link"
    done
    touch "$sysroot/made"
fi
export UNDERCOWL_SYSROOT="$sysroot"
cmake --preset arm64
cmake --build --preset arm64
export QT_QPA_PLATFORM=offscreen QT_QUICK_BACKEND=software
export QML2_IMPORT_PATH="$sysroot/usr/lib/aarch64-linux-gnu/qt6/qml" QT_PLUGIN_PATH="$sysroot/usr/lib/aarch64-linux-gnu/qt6/plugins"
ctest --test-dir build/arm64 -j 2 --output-on-failure -R '^(units|colour|wiring|sight|verdict|trade|job|journal|store|handover|talk):' \
    -E 'kill|survive|threads wait|somebody who writes|whatever byte'
rm -rf build/arm64/shop
qemu-aarch64-static -L "$sysroot" build/arm64/platform/cli/undercowlctl demo --only-shop --store build/arm64/shop
qemu-aarch64-static -L "$sysroot" build/arm64/platform/app/undercowl --store build/arm64/shop --shot build/arm64/shop.png
# dpkg-shlibdeps asks dpkg, which knows nothing of the sysroot: what the same libraries are packed in here, it is told.
tree=$PWD/build/arm64/tree
rm -rf "$tree"
cmake --install build/arm64 --prefix "$tree/usr" --strip >/dev/null
mkdir -p "$tree/debian"
ls /var/lib/dpkg/info/*.shlibs | grep -v -e cross -e lib32 -e x32 -e i386 | xargs cat >"$tree/debian/shlibs.local"
printf 'Source: undercowl\n\nPackage: undercowl\nArchitecture: arm64\n' >"$tree/debian/control"
libraries=$(cd "$tree" && dpkg-shlibdeps --ignore-missing-info -O \
    $(for folder in lib usr/lib usr/lib/aarch64-linux-gnu usr/lib/aarch64-linux-gnu/blas usr/lib/aarch64-linux-gnu/lapack \
        lib/aarch64-linux-gnu; do echo "-l$sysroot/$folder"; done) \
    usr/bin/* usr/lib/undercowl/* | sed -n 's/^shlibs:Depends=//p')
test -n "$libraries"
by_name=$(sed -n 's/^set(CPACK_DEBIAN_PACKAGE_DEPENDS "\(.*\)")$/\1/p' build/arm64/CPackConfig.cmake)
(cd build/arm64 &&
    cpack -G DEB -D CPACK_DEBIAN_PACKAGE_SHLIBDEPS=OFF -D "CPACK_DEBIAN_PACKAGE_DEPENDS=$by_name, $libraries")
ls -l build/arm64/*.deb
