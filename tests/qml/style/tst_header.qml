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
            header.covered = false;
            steps.stays = false;
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
                if (child.visible && child.enabled && child.opacity > 0)
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

        function test_what_gives_the_undo_line_its_place_data() {
            return [
                {
                    tag: "beside a keypad",
                    width: 360,
                    brief: true,
                    words: "Back"
                },
                {
                    tag: "beside a keypad in a wide window too",
                    width: 880,
                    brief: true,
                    words: "Back"
                },
                {
                    tag: "where it has little room, but for the lock",
                    width: 360,
                    brief: false,
                    words: "Back, Lock the screen"
                },
                {
                    tag: "nothing where it has room",
                    width: 880,
                    brief: false,
                    words: "Back, Speak, Steps so far, Lock the screen"
                }
            ];
        }
        function test_what_gives_the_undo_line_its_place(data) {
            header.width = data.width;
            header.brief = data.brief;
            waitForRendering(header);
            const before = targets(header);
            const places = before.map(each => each.mapToItem(header, 0, 0).x);
            const from = header.titleRoom.x;
            const room = header.titleRoom.width;
            header.covered = true;
            tryVerify(() => words() === data.words, 1000, words());
            compare(header.titleRoom.x, from);
            compare(header.titleRoom.width, room + header.spareRoom);
            verify(header.titleRoom.width >= 180, "too little for the words");
            for (const each of targets(header))
                verify(each.x + each.width <= header.titleRoom.x || each.mapToItem(header, 0, 0).x >= header.titleRoom.x + header.titleRoom.width, each.text);
            header.covered = false;
            tryVerify(() => targets(header).length === before.length);
            compare(targets(header).map(each => each.mapToItem(header, 0, 0).x), places); // nothing has moved
        }

        function test_what_ends_something_stays() {
            speak.offered = false;
            steps.stays = true;
            header.covered = true;
            tryVerify(() => words() === "Back, Steps so far, Lock the screen", 1000, words());
            compare(header.spareRoom, 0);
        }

        function test_the_keyboard_is_not_lost() {
            header.brief = true;
            tryVerify(() => targets(header).length === 2);
            const more = targets(header)[1];
            more.forceActiveFocus();
            verify(more.activeFocus);
            header.covered = true;
            tryVerify(() => !more.activeFocus);
            verify(window.Window.activeFocusItem !== null);
            keyClick(Qt.Key_Tab); // goes on
            tryVerify(() => targets(header)[0].activeFocus);
            keyClick(Qt.Key_Tab);
            header.covered = false;
            tryVerify(() => targets(header).length === 2);
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
