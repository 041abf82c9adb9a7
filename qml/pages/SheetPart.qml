pragma ComponentBehavior: Bound
import QtQuick
import Oddglass.Ui

// What a score sheet asks, what each drink is there for, and how the cups are served.
Column {
    id: root

    required property DraftModel model
    readonly property SheetPlanModel sheet: model.sheet
    property bool listShown: false

    spacing: 28

    Column {
        width: root.width
        visible: root.sheet.roles.count > 0
        spacing: 20

        SectionTitle {
            width: parent.width
            text: qsTr("What is each of them there for?")
        }
        Repeater {
            model: root.sheet.roles

            ChoiceRow {
                required property int index
                required property string name
                required property int role

                objectName: "role" + index + "_"
                width: root.width
                label: name
                options: root.sheet.roleChoices
                current: role
                onChosen: choice => root.sheet.chooseRole(index, choice)
            }
        }
        Body {
            objectName: "lacksReference"
            width: parent.width
            visible: text !== ""
            text: root.sheet.lacksReference
            color: Theme.attention
        }
    }
    ChoiceRow {
        objectName: "sheetMarked"
        width: root.width
        visible: root.sheet.markedChoices.length > 1
        label: qsTr("Does one of them also stand there open, in a marked cup to go back to?")
        options: root.sheet.markedChoices
        current: root.sheet.marked
        onChosen: index => root.sheet.chooseMarked(index)
    }
    CheckLine {
        objectName: "duplicate"
        width: root.width
        text: qsTr("Pour one of them twice")
        more: qsTr("The program draws which. How far the same drink moves says how small a gap may be read.")
        ticked: root.sheet.hasDuplicate
        onTickRequested: root.sheet.tickDuplicate()
    }
    Column {
        width: root.width
        spacing: 10

        SectionTitle {
            width: parent.width
            text: qsTr("How it is asked")
        }
        ChoiceRow {
            objectName: "ready"
            width: parent.width
            label: qsTr("Score sheets: each cup by itself, under its code. Take a ready sheet; every question of it may be changed.")
            options: root.sheet.ready
            current: root.sheet.taken
            hint: root.sheet.readyNote
            error: root.sheet.impossible
            onChosen: index => root.sheet.takeReady(index)
        }
        LinkButton {
            objectName: "sheetList"
            text: root.listShown ? qsTr("Close the list of questions") : qsTr("See its questions, and change them")
            quiet: true
            onClicked: root.listShown = !root.listShown
        }
        Small {
            objectName: "coverage"
            width: parent.width
            visible: text !== ""
            text: root.model.coverage
        }
    }
    SheetListPart {
        width: root.width
        visible: root.listShown
        sheet: root.sheet
    }
    Flow {
        width: root.width
        spacing: 28

        NumberField {
            objectName: "cupsAtOnce"
            width: Math.min(root.width, 240 * Theme.scale)
            label: qsTr("Most cups at once")
            text: root.sheet.cupsAtOnce
            error: root.model.wrongField === "cups_at_once" ? root.model.wrong : ""
            onTyped: text => root.sheet.typeCupsAtOnce(text)
            onStepRequested: by => root.sheet.stepCupsAtOnce(by)
        }
        NumberField {
            objectName: "pause"
            width: Math.min(root.width, 260 * Theme.scale)
            label: qsTr("Pause between two cups")
            unit: qsTr("seconds")
            text: root.sheet.pause
            error: root.model.wrongField === "pause_s" ? root.model.wrong : ""
            onTyped: text => root.sheet.typePause(text)
            onStepRequested: by => root.sheet.stepPause(by)
        }
        Field {
            objectName: "cleanser"
            width: Math.min(root.width, 320 * Theme.scale)
            label: qsTr("In between, the same for everybody")
            placeholder: qsTr("water and white bread")
            text: root.sheet.cleanser
            error: root.model.wrongField === "cleanser" ? root.model.wrong : ""
            onTyped: text => root.sheet.cleanser = text
        }
    }
}
