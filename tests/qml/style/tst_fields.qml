import QtQuick
import QtTest
import Undercowl.Style
import Undercowl.Test

Item {
    height: 640
    width: 360

    Column {
        width: parent.width

        TextEntry {
            id: line

            label: "Model"
            width: parent.width
        }

        TextEntryArea {
            id: area

            label: "Why it is here"
            width: parent.width
        }
    }

    SignalSpy {
        id: spy

        signalName: "edited"
    }

    TestCase {
        name: "Fields"
        when: windowShown

        function fields() {
            return [
                {
                    tag: "line",
                    field: line
                },
                {
                    tag: "area",
                    field: area
                }
            ];
        }

        function begin(field: Item) {
            field.clear();
            spy.target = field;
            spy.clear();
            field.forceActiveFocus();
        }

        function test_every_key_is_reported_data() {
            return fields();
        }
        function test_every_key_is_reported(data) {
            begin(data.field);
            keyClick("a");
            keyClick("b");
            compare(spy.count, 2);
            compare(spy.signalArguments[1][0], "ab");
            verify(data.field.fieldFocus);
        }

        function test_composing_is_reported_data() {
            return fields();
        }
        function test_composing_is_reported(data) {
            begin(data.field);
            Typist.compose("Zeph");
            compare(spy.signalArguments[spy.count - 1][0], "Zeph");
            compare(data.field.text, "Zeph");
            Typist.commit("Zephyr");
            compare(spy.signalArguments[spy.count - 1][0], "Zephyr");
            compare(data.field.commit(), "Zephyr");
        }

        function test_the_store_does_not_overwrite_what_is_being_typed_data() {
            return fields();
        }
        function test_the_store_does_not_overwrite_what_is_being_typed(data) {
            begin(data.field);
            keyClick("x");
            data.field.value = "from the store";
            compare(data.field.text, "x");
            data.field.value = "";
        }

        function test_what_comes_late_is_shown_where_nobody_typed_data() {
            return fields();
        }
        function test_what_comes_late_is_shown_where_nobody_typed(data) {
            begin(data.field);
            const before = spy.count;
            data.field.value = "a draft";
            compare(data.field.text, "a draft");
            compare(spy.count, before); // nobody edited it
            keyClick(Qt.Key_End);
            keyClick("s");
            compare(data.field.text, "a drafts");
            data.field.value = "a drafts";
            compare(data.field.text, "a drafts");
        }
    }
}
