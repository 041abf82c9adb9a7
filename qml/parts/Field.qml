import QtQuick
import QtQuick.Controls.Basic

// One line to type in, with its label above and, when something is wrong, what is wrong below.
Column {
    id: root

    required property string label
    property string error: ""
    property string hint: ""
    property alias text: input.text
    property alias input: input
    property alias placeholder: input.placeholderText
    property bool last: false

    signal typed(string text)
    signal accepted()

    spacing: 6

    Small {
        width: root.width
        text: root.label
        color: root.error === "" ? Theme.muted : Theme.attention
    }
    TextField {
        id: input

        objectName: root.objectName + "Input"
        width: root.width
        implicitHeight: Math.max(Theme.target, 48, contentHeight + 20)
        leftPadding: 14
        rightPadding: 14
        color: Theme.ink
        placeholderTextColor: Theme.muted
        selectionColor: Theme.accent
        selectedTextColor: Theme.accentText
        font.family: Theme.textFamily
        font.pixelSize: Theme.body * 1.125
        selectByMouse: true
        Accessible.name: root.label
        Accessible.description: root.error === "" ? root.hint : root.error
        onTextEdited: root.typed(text)
        onAccepted: root.accepted()

        background: Rectangle {
            radius: Theme.radius
            color: Theme.sheet
            border.width: 1
            border.color: root.error === "" ? Theme.line : Theme.attention

            FocusRing {
                anchors.margins: -3
                shown: input.activeFocus
            }
        }
    }
    Small {
        width: root.width
        visible: text !== ""
        text: root.error === "" ? root.hint : root.error
        color: root.error === "" ? Theme.muted : Theme.attention
    }
}
