pragma ComponentBehavior: Bound
import QtQuick
import Oddglass.Ui

// Answers from a table of any form: its file, then what each column means.
Column {
    id: root

    required property FormModel form

    spacing: 14

    Flow {
        width: parent.width
        visible: !root.form.read
        spacing: 24

        Field {
            objectName: "formFile"
            width: Math.min(parent.width, 520)
            label: qsTr("Or take the answers from a table that a form made (.csv)")
            text: root.form.file
            error: root.form.wrongField !== "" ? root.form.wrong : ""
            onTyped: text => root.form.file = text
            onAccepted: root.form.open()
        }
        LinkButton {
            objectName: "formOpen"
            topPadding: 24
            text: qsTr("Read its columns")
            onClicked: root.form.open()
        }
    }
    Column {
        width: parent.width
        visible: root.form.read
        Accessible.role: Accessible.List
        Accessible.name: qsTr("The columns")

        Repeater {
            model: root.form.columns

            RowLink {
                required property int index
                required property string name
                required property string says
                required property bool here

                objectName: "formColumn" + index
                width: root.width
                text: name
                line: says
                faded: !here && root.form.choosing
                onClicked: root.form.choose(index)
            }
        }
    }
    Panel {
        width: parent.width
        visible: root.form.choosing

        ChoiceRow {
            objectName: "formMeaning"
            width: parent.width
            label: root.form.asked
            options: root.form.meanings
            current: root.form.meaning
            onChosen: index => root.form.setMeaning(index)
        }
        ChoiceRow {
            objectName: "formCup"
            width: parent.width
            visible: options.length > 0
            label: qsTr("About which cup, from the left?")
            options: root.form.cups
            current: root.form.cup
            onChosen: index => root.form.setCup(index)
        }
        ChoiceRow {
            objectName: "formRound"
            width: parent.width
            visible: options.length > 0
            label: qsTr("In which round?")
            options: root.form.rounds
            current: root.form.round
            onChosen: index => root.form.setRound(index)
        }
    }
}
