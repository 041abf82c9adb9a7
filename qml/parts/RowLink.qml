import QtQuick
import QtQuick.Controls.Basic

// One line of a list that leads somewhere: a mark, what it is, and a smaller line below.
AbstractButton {
    id: root

    property string line: ""
    property string shape: ""
    property bool faded: false

    implicitWidth: 400
    implicitHeight: Math.max(Theme.target, implicitContentHeight + 24)
    focusPolicy: Qt.StrongFocus
    Accessible.role: Accessible.Button
    Accessible.name: text
    Accessible.description: line
    Keys.onReturnPressed: root.clicked()

    contentItem: Row {
        spacing: 18

        Item {
            width: 20
            height: Theme.body * 1.5
            visible: root.shape !== ""

            VerdictMark {
                anchors.centerIn: parent
                scale: 20 / 32
                shape: root.shape
            }
        }
        Column {
            width: root.availableWidth - (root.shape !== "" ? 38 : 0)
            spacing: 2

            Body {
                width: parent.width
                text: root.text
                color: root.faded ? Theme.muted : Theme.ink
                font.weight: Font.Medium
                Accessible.ignored: true
            }
            Small {
                width: parent.width
                visible: root.line !== ""
                text: root.line
                Accessible.ignored: true
            }
        }
    }
    background: Rectangle {
        color: root.hovered ? Theme.soft : "transparent"
        radius: 4

        HairLine {
            y: parent.height - 1
            width: parent.width
        }
        FocusRing {
            anchors.margins: -2
            shown: root.visualFocus
        }
    }
    // The words decide the height; what they are centred by must not come back into it.
    topPadding: Math.max(0, (height - implicitContentHeight) / 2)
    leftPadding: 8
    rightPadding: 8
}
