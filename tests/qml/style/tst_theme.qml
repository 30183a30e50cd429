// Contrast by the formula of WCAG 2.1, 'contrast ratio' and 'relative luminance' (written from memory).
import QtQuick
import QtTest
import Undercowl.Style

Item {
    height: 640
    width: 360

    TestCase {
        name: "Theme"

        function linear(part: real): real {
            return part <= 0.04045 ? part / 12.92 : Math.pow((part + 0.055) / 1.055, 2.4);
        }

        function luminance(tone): real {
            return 0.2126 * linear(tone.r) + 0.7152 * linear(tone.g) + 0.0722 * linear(tone.b);
        }

        function contrast(one, other): real {
            const a = luminance(one);
            const b = luminance(other);
            return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
        }

        function test_the_formula() {
            fuzzyCompare(contrast(Qt.rgba(0, 0, 0, 1), Qt.rgba(1, 1, 1, 1)), 21, 0.001);
            fuzzyCompare(contrast(Qt.rgba(119 / 255, 119 / 255, 119 / 255, 1), Qt.rgba(1, 1, 1, 1)), 4.478, 0.01);
        }

        function test_contrast_data() {
            return [
                {
                    tag: "night",
                    tokens: Theme.night,
                    least: 7
                },
                {
                    tag: "day",
                    tokens: Theme.day,
                    least: 7
                },
                {
                    tag: "sun",
                    tokens: Theme.sun,
                    least: 10
                }
            ];
        }
        function test_contrast(data) {
            const t = data.tokens;
            for (const words of ["ink", "quiet", "caution", "stop", "act"]) {
                for (const surface of ["ground", "panel", "raised", "pressed"]) {
                    const ratio = contrast(t[words], t[surface]);
                    verify(ratio >= data.least, words + " on " + surface + ": " + ratio.toFixed(2));
                }
            }
            verify(contrast(t.actInk, t.act) >= data.least);
            verify(contrast(t.actInk, t.actPressed) >= data.least);
        }

        // Through the shade that lies over a dim screen, which is night: 4.5, what words need at least (WCAG 2.1, 1.4.3).
        function test_contrast_when_dim() {
            const seen = tone => Qt.rgba(tone.r * (1 - Theme.dimness.a), tone.g * (1 - Theme.dimness.a), tone.b * (1 - Theme.dimness.a), 1);
            verify(Theme.dimness.a >= 0.25); // else nothing is dim
            for (const words of ["ink", "quiet", "caution", "stop", "act"]) {
                for (const surface of ["ground", "panel", "raised"]) {
                    const ratio = contrast(seen(Theme.night[words]), seen(Theme.night[surface]));
                    verify(ratio >= 4.5, words + " on " + surface + ": " + ratio.toFixed(2));
                }
            }
        }

        function test_lift_sizes() {
            Theme.windowWidth = 360;
            Theme.windowHeight = 640;
            verify(Theme.liftMain >= 96 && Theme.liftOther >= 77 && Theme.liftKey >= 63);
            Theme.windowWidth = 412;
            Theme.windowHeight = 915;
            verify(Theme.liftMain >= 96 && Theme.liftOther >= 96 && Theme.liftKey >= 83);
            Theme.windowWidth = 640;
            Theme.windowHeight = 360;
            verify(Theme.liftMain >= 96 && Theme.liftOther >= 77 && Theme.liftKey >= 63);
            Theme.windowWidth = 915;
            Theme.windowHeight = 412;
            verify(Theme.liftMain >= 96 && Theme.liftOther >= 77 && Theme.liftKey >= 83);
            Theme.windowWidth = 360;
            Theme.windowHeight = 640;
        }

        function test_motion_can_be_switched_off() {
            verify(Theme.quick >= 120 && Theme.calm <= 180);
            Theme.reduceMotion = true;
            compare(Theme.quick, 0);
            compare(Theme.calm, 0);
            Theme.reduceMotion = false;
        }

        function test_numbers_stay_with_their_unit() {
            compare(Theme.quantity("84", "N.m"), "84\u00a0N.m");
        }
    }
}
