import QtQuick
import QtTest
import Undercowl.Style

Item {
    id: window

    height: 640
    width: 360

    PageHeader {
        id: header

        aside: "step 12"
        canLock: true
        lift: true
        title: "Strip"
        width: window.width

        PageTool {
            id: speak

            iconName: "memo"
            text: "Speak"
        }

        PageTool {
            id: steps

            iconName: "list"
            text: "Steps so far"
        }
    }

    SignalSpy {
        id: spy

        signalName: "triggered"
        target: steps
    }

    SignalSpy {
        id: locked

        signalName: "locks"
        target: header
    }

    TestCase {
        name: "Header"
        when: windowShown

        function init() {
            header.lift = true;
            header.brief = false;
            header.width = 360;
            speak.offered = true;
            spy.clear();
            locked.clear();
            wait(Theme.tapGuard + 50);
        }

        // What is seen below an item and can be touched, from left to right.
        function targets(under: Item): var {
            let found = [];
            for (let i = 0; i < under.children.length; ++i) {
                const child = under.children[i];
                if (child.visible)
                    found = found.concat(child.triggered !== undefined ? [child] : targets(child));
            }
            return found.sort((one, other) => one.mapToItem(null, 0, 0).x - other.mapToItem(null, 0, 0).x);
        }
        function words(): string {
            return targets(header).map(each => each.text).join(", ");
        }
        function line(text: string): Item {
            let found = null;
            tryVerify(() => {
                found = targets(window.Window.contentItem).find(each => each.title === text) ?? null;
                return found !== null;
            });
            return found;
        }
        function touch(item: Item) {
            mouseClick(item, item.width / 2, item.height / 2);
        }

        function test_what_stands_in_it_data() {
            return [
                {
                    tag: "what has no room is gathered, the lock is not",
                    width: 360,
                    brief: false,
                    words: "Back, More on this page, Lock the screen"
                },
                {
                    tag: "beside a keypad one button",
                    width: 360,
                    brief: true,
                    words: "Back, More on this page"
                },
                {
                    tag: "beside the actions of a phone on its side",
                    width: 303,
                    brief: false,
                    words: "Back, More on this page"
                },
                {
                    tag: "room for all",
                    width: 640,
                    brief: false,
                    words: "Back, Speak, Steps so far, Lock the screen"
                }
            ];
        }
        function test_what_stands_in_it(data) {
            header.width = data.width;
            header.brief = data.brief;
            tryVerify(() => words() === data.words, 1000, words());
            for (const each of targets(header))
                verify(each.width >= 77 && each.height >= 77, each.text + ": " + each.width + " x " + each.height);
            verify(header.titleRoom.width >= 77, "no room for the line that offers undo");
        }

        function test_one_tool_needs_no_gathering() {
            speak.offered = false;
            tryVerify(() => words() === "Back, Steps so far, Lock the screen", 1000, words());
            waitForRendering(header); // buttons move over with the next frame
            touch(targets(header)[1]);
            compare(spy.count, 1);
        }

        function test_away_from_the_lift_all_are_small() {
            header.lift = false;
            tryVerify(() => words() === "Back, Speak, Steps so far, Lock the screen", 1000, words());
            for (const each of targets(header))
                verify(each.width >= 48 && each.width < 77);
        }

        function test_large_lines_do_what_the_buttons_do() {
            header.brief = true;
            tryVerify(() => targets(header).length === 2);
            touch(targets(header)[1]);
            const chosen = line("Steps so far");
            verify(chosen.height >= 77);
            touch(chosen);
            compare(spy.count, 1);
            wait(Theme.tapGuard + 50);
            touch(targets(header)[1]);
            touch(line("Lock the screen"));
            compare(locked.count, 1);
            compare(spy.count, 1);
        }
    }
}
