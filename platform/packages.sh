# Debian 12 packages, in one place for platform/run.sh and tests/run.sh. Sourced, not run: POSIX sh.
#
# need_packages GROUP... installs what is missing of the groups run (to build and run the app), test (to build
# and run the tests besides) and cross (to build for phones). Quick when nothing is missing.

packages_run="
build-essential cmake ninja-build pkg-config
libexpected-dev nlohmann-json3-dev libfmt-dev libcli11-dev
libsqlitecpp-dev libsqlite3-dev libsodium-dev libarchive-dev libfontconfig-dev
libpocketsphinx-dev libsphinxbase-dev pocketsphinx-en-us flite1-dev libkissfft-dev libsndfile1-dev libsamplerate0-dev
libqrencode-dev libzxing-dev
libopencv-core-dev libopencv-imgproc-dev libopencv-dnn-dev libxnnpack-dev libpthreadpool-dev libturbojpeg0-dev libpng-dev
qt6-base-dev qt6-base-dev-tools qt6-declarative-dev qt6-declarative-dev-tools
qt6-l10n-tools qt6-multimedia-dev qt6-sensors-dev qt6-speech-dev qt6-svg-dev libgl-dev libvulkan-dev
qml6-module-qtqml qml6-module-qtqml-models qml6-module-qtqml-workerscript
qml6-module-qtquick qml6-module-qtquick-controls qml6-module-qtquick-templates
qml6-module-qtquick-layouts qml6-module-qtquick-window
qml6-module-qtmultimedia qml6-module-qttexttospeech
qt6-qpa-plugins qt6-speech-flite-plugin libgl1-mesa-dri fonts-dejavu-core
"

packages_test="
catch2 clang clang-format clang-tidy dbus-daemon python3 poppler-utils units
pulseaudio pulseaudio-utils qml6-module-qttest xvfb xauth xdotool imagemagick
"

# To cross-compile for 64-bit ARM and to run that here.
packages_cross="
crossbuild-essential-arm64 qemu-user-static mmdebstrap dpkg-dev
"

need_packages() {
    wanted=
    for group in "$@"; do
        case $group in
        run) wanted="$wanted $packages_run" ;;
        test) wanted="$wanted $packages_test" ;;
        cross) wanted="$wanted $packages_cross" ;;
        *) echo "packages.sh: no group $group" >&2; return 2 ;;
        esac
    done
    missing=
    for package in $wanted; do
        state=$(dpkg-query -W -f='${db:Status-Status}' "$package" 2>/dev/null) || state=
        test "$state" = installed || missing="$missing $package"
    done
    test -n "$missing" || return 0
    echo "Installing:$missing"
    as_root=
    if test "$(id -u)" -ne 0; then
        command -v sudo >/dev/null || { echo "Install these as root, then run this again:$missing" >&2; return 1; }
        as_root=sudo
    fi
    $as_root apt-get update -q &&
        $as_root env DEBIAN_FRONTEND=noninteractive apt-get install -q -y --no-install-recommends $missing
}
