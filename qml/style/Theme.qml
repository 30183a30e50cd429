// Every colour, size, gap, typeface and duration of the app. Nothing outside this file writes one down.
//
//   mode           "night", "day" or "sun"; the sun theme is for direct light and reaches 10:1 or more
//   textScale      1 to 2; every type size follows it, and controls grow with their words
//   reduceMotion   when set, durations are 0
//   leftHanded     the main action moves to the other thumb
//   windowWidth, windowHeight   kept by AppWindow, in dp; the lift metrics depend on them
//
// Sizes are in dp. 6.4 dp are one millimetre on the phones that the lift sizes were chosen for.
pragma Singleton

import QtQuick
import Undercowl.Style

QtObject {
    id: root

    component Tokens: QtObject {
        required property color ground
        required property color panel
        required property color raised
        required property color pressed
        required property color line
        required property color ink
        required property color quiet
        required property color act
        required property color actPressed
        required property color actInk
        required property color caution
        required property color stop
    }

    property string mode: "night"
    property real textScale: 1
    property bool reduceMotion: false
    property bool leftHanded: false
    property real windowWidth: 360
    property real windowHeight: 640

    readonly property Tokens night: Tokens {
        ground: "#14181B"
        panel: "#1F252A"
        raised: "#2B343B"
        pressed: "#10161A"
        line: "#76868F"
        ink: "#F3EFE6"
        quiet: "#C3CBD0"
        act: "#7FE0C4"
        actPressed: "#B4F0DE"
        actInk: "#0B1613"
        caution: "#FFC45C"
        stop: "#FFB0A3"
    }
    readonly property Tokens day: Tokens {
        ground: "#F3EFE6"
        panel: "#FFFFFF"
        raised: "#E6DFD1"
        pressed: "#FFFFFF"
        line: "#6F7672"
        ink: "#14181B"
        quiet: "#3F484E"
        act: "#004F40"
        actPressed: "#00352B"
        actInk: "#FFFFFF"
        caution: "#653C00"
        stop: "#8A160B"
    }
    readonly property Tokens sun: Tokens {
        ground: "#FFFFFF"
        panel: "#FFFFFF"
        raised: "#EFEFEF"
        pressed: "#FFFFFF"
        line: "#000000"
        ink: "#000000"
        quiet: "#1E1E1E"
        act: "#00382E"
        actPressed: "#001F19"
        actInk: "#FFFFFF"
        caution: "#4A2B00"
        stop: "#6E0C04"
    }
    readonly property Tokens tokens: mode === "day" ? day : mode === "sun" ? sun : night

    readonly property color ground: tokens.ground
    readonly property color panel: tokens.panel
    readonly property color raised: tokens.raised
    readonly property color pressed: tokens.pressed
    readonly property color line: tokens.line
    readonly property color ink: tokens.ink
    readonly property color quiet: tokens.quiet
    readonly property color act: tokens.act
    readonly property color actPressed: tokens.actPressed
    readonly property color actInk: tokens.actInk
    readonly property color caution: tokens.caution
    readonly property color stop: tokens.stop
    // What lies under a sheet. Only dims: nothing is read through it.
    readonly property color shade: "#B0000000"
    // Over a dim screen. What is read through it still has the contrast that words need; a test holds that.
    readonly property color dimness: "#48000000"
    // Marks on photos are a dark ring in a light one: visible on any picture, in every theme.
    readonly property color markLight: "#FFFFFF"
    readonly property color markDark: "#101010"
    // The sleeve with a wire's code is paper in every theme.
    readonly property color sleeve: "#FFFFFF"
    readonly property color sleeveInk: "#0A0A0A"

    readonly property string family: Typefaces.sans
    readonly property string monoFamily: Typefaces.mono

    // What is read from a metre away: capitals of 6 mm for codes and values, 4 mm for names.
    readonly property int valueSize: scaled(64)
    // Large already: growing on with the text would hide the wire behind its sleeve.
    readonly property int codeSize: Math.min(scaled(54), 62)
    // What is larger than text grows with it no further than text twice its size, or a little more.
    readonly property int nameSize: Math.min(scaled(28), 42)
    readonly property int mainActionSize: Math.min(scaled(30), 40)
    readonly property int actionSize: Math.min(scaled(22), 34)
    readonly property int titleSize: Math.min(scaled(22), 34)
    readonly property int textSize: scaled(17)
    readonly property int asideSize: scaled(15)

    // Beside a title, where there is no room for large words.
    readonly property int headAside: Math.min(asideSize, 20)

    // Words so large that what stands beside them in a row has to give way.
    readonly property bool largeText: textScale > 1.3

    readonly property int grid: 4
    readonly property int margin: 12
    readonly property int targetGap: 13
    readonly property int corner: 12
    readonly property int smallCorner: 8
    readonly property int hairline: 1
    readonly property int stroke: 2
    readonly property int ring: 3
    // Of the window's edge that tells a state: within the margin, so that it lies on no words.
    readonly property int edge: 6
    readonly property int touch: 48
    readonly property int icon: scaled(24)
    readonly property int smallIcon: scaled(20)
    readonly property int bigIcon: scaled(36)
    // Alone on a button at the lift, which does not grow with it.
    readonly property int liftIcon: Math.min(bigIcon, 48)
    readonly property int readingWidth: wide ? 800 : 640

    readonly property bool roomy: Math.min(windowWidth, windowHeight) >= 412
                                  && Math.max(windowWidth, windowHeight) >= 915
    // A phone that lies on its side: below the actions there would be no room for what is read.
    readonly property bool low: windowHeight < 480 && windowWidth >= 560
    // From here on the actions stand beside what is read: a page of so much, or a window.
    readonly property int besideFrom: low ? 560 : 800
    readonly property bool wide: windowWidth >= besideFrom
    // From here on a list stands beside its detail.
    readonly property bool split: windowWidth >= 1100
    readonly property int listWidth: 400

    readonly property int liftMain: roomy && !low ? 112 : 96
    readonly property int liftOther: roomy && !low ? 96 : 77
    readonly property int liftWidth: 77 // at least, of what stands beside others
    // Four rows of them have the height of a phone that lies on its side to themselves.
    readonly property int liftKey: Math.min(roomy ? 84 : 63, low ? Math.max(touch, (windowHeight - 2 * margin - 3 * targetGap) / 4) : 84)
    readonly property int liftKeyWidth: 103
    // From here on the line that offers undo has room for its words in full.
    readonly property real undoRoom: liftKeyWidth * 3 * textScale
    readonly property int wireHeight: roomy ? 88 : 76

    // A second tap that comes sooner is a trembling thumb or water on the glass.
    readonly property int tapGuard: 300
    // What a button acts on has changed: so long it takes no touch, which was meant for what was there before. Who knows what
    // comes, a test, need not look first and sets it to 0.
    property int settle: 800
    readonly property real unsettled: 0.45 // opacity of such a button meanwhile
    readonly property int quick: reduceMotion ? 0 : 120
    readonly property int calm: reduceMotion ? 0 : 180
    readonly property int undoTime: 8000
    // How long the edge says that something was saved or refused.
    readonly property int tellTime: 1500
    // From the first touch that unlocks to the second.
    readonly property int unlockTime: 4000

    function scaled(size: real): int {
        return Math.round(size * Math.max(1, Math.min(2, textScale)));
    }

    // A number and its unit that no line break parts.
    function quantity(number: string, unit: string): string {
        return unit === "" ? number : number + "\u00a0" + unit;
    }

    // Of the actions where they stand beside what is read, on a page so wide.
    function handWidth(page: real): int {
        return page >= 1100 ? 400 : page >= 800 ? 336 : 312;
    }
}
