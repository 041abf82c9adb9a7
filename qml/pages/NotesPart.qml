pragma ComponentBehavior: Bound
import QtQuick
import Oddglass.Ui

// Dated notes of what was done. Nothing is overwritten; stabilising twice is asked about.
Column {
    id: root

    required property BeverageModel model

    spacing: 12

    SectionTitle {
        width: parent.width
        text: qsTr("What was done")
    }
    Small {
        width: parent.width
        visible: root.model.notes.count === 0
        text: qsTr("No notes yet. What did you do last?")
    }
    Repeater {
        model: root.model.notes

        Column {
            id: note

            required property int index
            required property string day
            required property string says

            width: root.width
            spacing: 2

            Small {
                width: parent.width
                text: note.day
            }
            Body {
                width: parent.width
                text: note.says
            }
            Flow {
                width: parent.width
                spacing: 24

                LinkButton { objectName: "noteCorrect" + note.index; text: qsTr("Correct it"); Accessible.name: qsTr("%1: %2").arg(note.says).arg(text); quiet: true; onClicked: root.model.correctNote(note.index) }
                LinkButton { objectName: "noteWithdraw" + note.index; text: qsTr("It was wrong; take it back"); Accessible.name: qsTr("%1: %2").arg(note.says).arg(text); quiet: true; onClicked: root.model.withdrawNote(note.index) }
            }
            HairLine {
                width: parent.width
            }
        }
    }
    Panel {
        width: parent.width

        Small {
            width: parent.width
            visible: text !== ""
            text: root.model.noteReplaced
        }
        ChoiceRow {
            objectName: "noteKind"
            width: parent.width
            label: qsTr("A new note")
            options: [qsTr("reading"), qsTr("addition"), qsTr("stabilised"), qsTr("racked"), qsTr("bottled"), qsTr("something else"), qsTr("done otherwise than last time"), qsTr("haze"), qsTr("sediment"),
                qsTr("sulphur smell"), qsTr("a bottle gushed")]
            current: root.model.noteKind
            onChosen: index => root.model.noteKind = index
        }
        Flow {
            width: parent.width
            spacing: 24

            Field {
                objectName: "noteDay"
                width: 200
                label: qsTr("Day")
                text: root.model.noteDay
                error: root.model.wrongField === "done_on" ? root.model.wrong : ""
                onTyped: text => root.model.noteDay = text
            }
            Field {
                objectName: "noteGravity"
                width: 200
                visible: root.model.noteKind === 0
                label: qsTr("Gravity, %1").arg(root.model.gravityUnit)
                text: root.model.noteGravity
                error: root.model.wrongField === "gravity" ? root.model.wrong : ""
                onTyped: text => root.model.noteGravity = text
            }
        }
        ChoiceRow {
            objectName: "noteLevel"
            width: parent.width
            visible: root.model.noteLevels.length > 0
            label: qsTr("How much")
            options: root.model.noteLevels
            current: root.model.noteLevel
            error: root.model.wrongField === "level" ? root.model.wrong : ""
            onChosen: index => root.model.noteLevel = index
        }
        Field {
            objectName: "noteWord"
            width: Math.min(parent.width, 420)
            visible: root.model.noteIsDeed
            label: qsTr("Against which fault, if any")
            text: root.model.noteWord
            hint: qsTr("a tasting word, such as butter")
            error: root.model.wrongField === "word" ? root.model.wrong : ""
            onTyped: text => root.model.noteWord = text
        }
        LongField {
            objectName: "noteText"
            width: parent.width
            label: qsTr("In your own words")
            text: root.model.noteText
            error: root.model.wrongField === "text" ? root.model.wrong : ""
            onTyped: text => root.model.noteText = text
        }
        LinkButton {
            objectName: "noteLeave"
            visible: root.model.noteReplaced !== ""
            text: qsTr("Leave the old note as it is")
            quiet: true
            onClicked: root.model.leaveCorrection()
        }
        Column {
            width: parent.width
            visible: root.model.again !== ""
            spacing: 8

            Body {
                width: parent.width
                text: root.model.again
                color: Theme.attention
                Accessible.role: Accessible.AlertMessage
            }
            Flow {
                width: parent.width
                spacing: 24

                LinkButton { objectName: "againNo"; text: qsTr("No, do not write it down"); onClicked: root.model.leaveAgain() }
                LinkButton { objectName: "againYes"; text: qsTr("Yes, it was done a second time"); danger: true; onClicked: root.model.saveNoteAgain() }
            }
        }
    }
}
