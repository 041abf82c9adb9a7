pragma ComponentBehavior: Bound
import QtQuick
import QtTest
import Oddglass

TestCase {
    id: test

    name: "parts"
    when: windowShown
    width: 900
    height: 900
    visible: true

    Component {
        id: dangerPart

        DangerQuestion {
            objectName: "danger"
            width: 600
            link: "Break the seal"
            first: "Do you want to break it?"
            second: "There will be no verdict. Break it all the same?"
            deed: "Break it"
        }
    }
    Component {
        id: primaryPart

        PrimaryButton {
            objectName: "go"
            text: "Go on"
        }
    }
    Component {
        id: choicePart

        ChoiceRow {
            objectName: "choice"
            width: 600
            options: ["sure", "fairly sure", "a guess"]
        }
    }
    Component {
        id: numberPart

        NumberField {
            objectName: "number"
            width: 300
            label: "Rounds"
            text: "3"
        }
    }
    Component {
        id: codePart

        CodeCard {
            code: "472"
            spokenCode: "4 7 2"
            position: "middle"
        }
    }
    Component {
        id: tickPart

        CheckLine {
            text: "I am of age"
        }
    }
    SignalSpy {
        id: spy
    }

    function watch(item, signalName) {
        spy.target = null;
        spy.clear();
        spy.signalName = signalName;
        spy.target = item;
    }

    function test_danger_is_asked_about_twice() {
        const part = createTemporaryObject(dangerPart, test);
        watch(part, "confirmed");
        mouseClick(findChild(part, "dangerOpen"));
        compare(spy.count, 0);
        mouseClick(findChild(part, "dangerNext"));
        compare(spy.count, 0);
        mouseClick(findChild(part, "dangerDeed"));
        compare(spy.count, 1);
    }

    function test_danger_can_be_left() {
        const part = createTemporaryObject(dangerPart, test);
        watch(part, "confirmed");
        mouseClick(findChild(part, "dangerOpen"));
        mouseClick(findChild(part, "dangerKeep"));
        compare(part.step, 0);
        compare(spy.count, 0);
    }

    function test_primary_button_without_a_reason_acts_by_every_key() {
        const part = createTemporaryObject(primaryPart, test);
        watch(part, "acted");
        part.button.forceActiveFocus();
        keyClick(Qt.Key_Space);
        keyClick(Qt.Key_Return);
        keyClick(Qt.Key_Enter);
        compare(spy.count, 3);
    }

    function test_primary_button_with_a_reason_does_nothing_and_says_why() {
        const part = createTemporaryObject(primaryPart, test, {reason: "Add a second drink."});
        watch(part, "acted");
        mouseClick(part.button);
        compare(spy.count, 0);
        compare(part.button.Accessible.description, "Add a second drink.");
    }

    function test_choices_are_taken_by_mouse_digit_and_space() {
        const part = createTemporaryObject(choicePart, test);
        watch(part, "chosen");
        mouseClick(findChild(part, "choice1"));
        compare(spy.signalArguments[0][0], 1);
        keyClick(Qt.Key_3);
        compare(spy.signalArguments[1][0], 2);
        keyClick(Qt.Key_Left);
        keyClick(Qt.Key_Space);
        compare(spy.signalArguments[2][0], 1);
        keyClick(Qt.Key_9);
        compare(spy.count, 3);
    }

    function test_a_number_is_stepped_outside() {
        const part = createTemporaryObject(numberPart, test);
        watch(part, "stepRequested");
        mouseClick(findChild(part, "numberMore"));
        compare(spy.signalArguments[0][0], 1);
        compare(part.input.text, "3");
        part.text = "4";
        compare(part.input.text, "4");
    }

    function test_codes_are_spoken_digit_by_digit() {
        const part = createTemporaryObject(codePart, test);
        compare(part.Accessible.name, "middle, 4 7 2");
    }

    function test_a_tick_is_asked_for_and_not_taken() {
        const part = createTemporaryObject(tickPart, test);
        watch(part, "tickRequested");
        mouseClick(part);
        compare(spy.signalArguments[0][0], true);
        compare(part.ticked, false);
    }

    function test_wet_targets_on_tasting_pages() {
        Theme.tasting = true;
        const part = createTemporaryObject(choicePart, test);
        verify(findChild(part, "choice0").height >= 56);
        Theme.tasting = false;
    }

    // Relative luminance and contrast: WCAG 2.1, definitions of "relative luminance" and "contrast ratio" (from memory).
    function luminance(c) {
        const part = v => v <= 0.03928 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4);
        return 0.2126 * part(c.r) + 0.7152 * part(c.g) + 0.0722 * part(c.b);
    }

    function contrast(a, b) {
        const x = luminance(a), y = luminance(b);
        return (Math.max(x, y) + 0.05) / (Math.min(x, y) + 0.05);
    }

    function test_contrast_of_text_data() {
        return [{tag: "light", dark: false, tasting: false}, {tag: "dark", dark: true, tasting: false},
                {tag: "grey", dark: false, tasting: true}, {tag: "dark grey", dark: true, tasting: true}];
    }

    function test_contrast_of_text(row) {
        Theme.dark = row.dark;
        Theme.tasting = row.tasting;
        verify(contrast(Theme.ink, Theme.paper) >= 7);
        verify(contrast(Theme.muted, Theme.paper) >= 4.5);
        verify(contrast(Theme.muted, Theme.sheet) >= 4.5);
        verify(contrast(Theme.accentText, Theme.accent) >= 4.5);
        verify(contrast(Theme.attention, Theme.paper) >= 4.5);
        Theme.dark = false;
        Theme.tasting = false;
    }
}
