import QtQuick
import Oddglass.Ui

// One question of a sheet: how it is answered, about what, when.
Panel {
    id: root

    required property SheetPlanModel sheet

    SectionTitle {
        width: parent.width
        text: root.sheet.isNew ? qsTr("A new question") : qsTr("Change this question")
    }
    ChoiceRow {
        objectName: "itemKind"
        width: parent.width
        label: qsTr("How is it answered?")
        options: root.sheet.kinds
        current: root.sheet.kind
        onChosen: index => root.sheet.chooseKind(index)
    }
    Field {
        objectName: "itemWord"
        width: Math.min(parent.width, 420)
        visible: root.sheet.mayHaveWord
        label: qsTr("About what? A word of your own, or one of those below")
        text: root.sheet.word
        onTyped: text => root.sheet.typeWord(text)
        onAccepted: root.sheet.put()
    }
    ChoiceRow {
        objectName: "offered"
        width: parent.width
        visible: root.sheet.mayHaveWord && options.length > 0
        options: root.sheet.offered
        onChosen: index => root.sheet.takeWord(index)
    }
    ChoiceRow {
        objectName: "itemPart"
        width: parent.width
        visible: options.length > 1
        label: qsTr("When?")
        options: root.sheet.parts
        current: root.sheet.part
        onChosen: index => root.sheet.choosePart(index)
    }
    NumberField {
        objectName: "itemLimit"
        width: parent.width
        visible: root.sheet.mayHaveLimit
        label: qsTr("A gap up to this does not matter to you. Left empty, none is said.")
        unit: root.sheet.limitUnit
        text: root.sheet.limit
        onTyped: text => root.sheet.typeLimit(text)
        onStepRequested: by => root.sheet.stepLimit(by)
    }
    CheckLine {
        objectName: "itemMain"
        width: parent.width
        visible: root.sheet.mayBeMain
        text: qsTr("The plan is about this one")
        more: qsTr("A verdict is given on it. Each more of them makes the smallest gap that shows wider.")
        ticked: root.sheet.isMain
        onTickRequested: root.sheet.tickMain()
    }
    CheckLine {
        objectName: "itemLeftOut"
        width: parent.width
        text: qsTr("It may be left out")
        ticked: root.sheet.mayBeLeftOut
        onTickRequested: root.sheet.tickLeftOut()
    }
    Small {
        objectName: "itemNotYet"
        width: parent.width
        visible: text !== ""
        text: root.sheet.notYet
    }
    Flow {
        width: parent.width
        spacing: 24

        LinkButton {
            objectName: "itemPut"
            enabled: root.sheet.notYet === ""
            opacity: enabled ? 1 : 0.4
            text: root.sheet.isNew ? qsTr("Put it on the sheet") : qsTr("Keep the change")
            onClicked: root.sheet.put()
        }
        LinkButton {
            objectName: "itemLeave"
            text: qsTr("Leave it")
            quiet: true
            onClicked: root.sheet.leave()
        }
    }
}
