import QtQuick
import QtQuick.Controls.Basic

// A number that may be typed or stepped. The text comes from outside and so do the steps: nothing is counted here.
Column {
    id: root

    required property string label
    property string text: ""
    property string unit: ""
    property string error: ""
    property string hint: ""
    property alias input: input

    signal typed(string text)
    signal stepRequested(int by)

    spacing: 6
    onTextChanged: if (input.text !== text && !input.activeFocus) input.text = text

    Small {
        width: root.width
        text: root.label
        color: root.error === "" ? Theme.muted : Theme.attention
    }
    Row {
        spacing: 6

        StepButton {
            objectName: root.objectName + "Less"
            text: "\u2212"
            spoken: qsTr("%1: less").arg(root.label)
            onClicked: root.stepFrom(-1)
        }
        TextField {
            id: input

            objectName: root.objectName + "Input"
            width: Math.max(76, Theme.body * 5)
            height: Math.max(Theme.target, 44)
            text: root.text
            horizontalAlignment: TextInput.AlignHCenter
            color: Theme.ink
            selectionColor: Theme.accent
            selectedTextColor: Theme.accentText
            font.family: Theme.textFamily
            font.pixelSize: Theme.body * 1.125
            selectByMouse: true
            inputMethodHints: Qt.ImhFormattedNumbersOnly
            Accessible.name: root.unit === "" ? root.label : qsTr("%1, in %2").arg(root.label).arg(root.unit)
            Accessible.description: root.error === "" ? root.hint : root.error
            Keys.onUpPressed: root.stepFrom(1)
            Keys.onDownPressed: root.stepFrom(-1)
            onTextEdited: root.typed(text)

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
        StepButton {
            objectName: root.objectName + "More"
            text: "+"
            spoken: qsTr("%1: more").arg(root.label)
            onClicked: root.stepFrom(1)
        }
        Small {
            height: input.height
            visible: root.unit !== ""
            text: root.unit
            verticalAlignment: Text.AlignVCenter
        }
    }
    Small {
        width: root.width
        visible: text !== ""
        text: root.error === "" ? root.hint : root.error
        color: root.error === "" ? Theme.muted : Theme.attention
    }

    function stepFrom(by: int) {
        stepRequested(by);
        input.text = root.text;
    }
}
