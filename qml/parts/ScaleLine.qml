pragma ComponentBehavior: Bound
import QtQuick
import QtQuick.Controls.Basic

// A line between two ends. It is tapped, never dragged; steps beside it and arrow keys move the mark. Words on it stand where they belong.
Column {
    id: root

    required property string label
    // Whole points; -1 while there is no answer.
    property int value: -1
    property int low: 0
    property int high: 100
    property string lowEnd: ""
    property string highEnd: ""
    property string readOut: ""
    property var words: []
    property var wordMarks: []

    signal placed(int value)
    signal stepRequested(int by)

    spacing: 8

    Body {
        width: root.width
        text: root.label
    }
    Row {
        spacing: 12

        StepButton {
            objectName: root.objectName + "Less"
            text: "\u2212"
            spoken: qsTr("%1: less").arg(root.label)
            onClicked: root.stepRequested(-root.smallStep())
        }
        AbstractButton {
            id: line

            objectName: root.objectName + "Line"
            width: root.width - 2 * (Theme.target + 12)
            height: Math.max(Theme.target, 56)
            focusPolicy: Qt.StrongFocus
            Accessible.role: Accessible.Slider
            Accessible.name: root.label
            Accessible.description: root.readOut
            Keys.onRightPressed: root.stepRequested(root.smallStep())
            Keys.onUpPressed: root.stepRequested(root.smallStep())
            Keys.onLeftPressed: root.stepRequested(-root.smallStep())
            Keys.onDownPressed: root.stepRequested(-root.smallStep())
            Keys.onSpacePressed: root.begin()
            Keys.onReturnPressed: root.begin()
            Keys.onPressed: event => root.far(event)
            onClicked: root.placed(root.valueAt(pressX / width))

            background: Item {
                Rectangle {
                    y: parent.height / 2 - 1
                    width: parent.width
                    height: 2
                    color: Theme.line
                }
                Repeater {
                    model: [0, 1]

                    Rectangle {
                        required property int modelData

                        x: modelData * (line.width - width)
                        y: line.height / 2 - height / 2
                        width: 2
                        height: 18
                        color: Theme.line
                    }
                }
                Repeater {
                    model: root.wordMarks

                    Rectangle {
                        required property int modelData

                        x: root.shareOf(modelData) * line.width - 1
                        y: line.height / 2 - 6
                        width: 2
                        height: 12
                        color: Theme.muted
                    }
                }
                Rectangle {
                    visible: root.value >= 0
                    x: root.shareOf(root.value) * line.width - width / 2
                    y: line.height / 2 - height / 2
                    width: 8
                    height: 36
                    radius: 3
                    color: Theme.ink
                }
                FocusRing {
                    anchors.margins: -2
                    shown: line.visualFocus
                }
            }
        }
        StepButton {
            objectName: root.objectName + "More"
            text: "+"
            spoken: qsTr("%1: more").arg(root.label)
            onClicked: root.stepRequested(root.smallStep())
        }
    }
    Item {
        x: Theme.target + 12
        width: line.width
        height: Math.max(lowText.height, readOutText.height)

        Small {
            id: lowText

            width: parent.width / 3
            text: root.lowEnd
        }
        Small {
            id: readOutText

            x: parent.width / 3
            width: parent.width / 3
            text: root.readOut === "" ? qsTr("tap the line") : root.readOut
            color: Theme.ink
            font.weight: root.readOut === "" ? Font.Normal : Font.DemiBold
            horizontalAlignment: Text.AlignHCenter
        }
        Small {
            x: parent.width * 2 / 3
            width: parent.width / 3
            text: root.highEnd
            horizontalAlignment: Text.AlignRight
        }
    }
    Small {
        x: Theme.target + 12
        width: line.width
        visible: root.words.length > 0
        text: qsTr("From left to right on the line: %1.").arg(root.words.join(", "))
    }

    // Without an answer the first step sets the mark in the middle; Space never moves one that is set.
    function begin() {
        if (value < 0)
            stepRequested(smallStep());
    }

    function far(event: KeyEvent) {
        switch (event.key) {
        case Qt.Key_PageUp: stepRequested(10 * smallStep()); break;
        case Qt.Key_PageDown: stepRequested(-10 * smallStep()); break;
        case Qt.Key_Home: placed(low); break;
        case Qt.Key_End: placed(high); break;
        default: return;
        }
        event.accepted = true;
    }

    function smallStep(): int {
        return Math.max(1, Math.round((high - low) / 100));
    }

    function shareOf(value: int): real {
        return (value - low) / Math.max(1, high - low);
    }

    function valueAt(share: real): int {
        return Math.round(low + Math.max(0, Math.min(1, share)) * (high - low));
    }
}
