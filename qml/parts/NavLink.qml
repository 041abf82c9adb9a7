import QtQuick
import QtQuick.Controls.Basic

// One line of the side column; the page one is on is bold.
AbstractButton {
    id: root

    property bool here: false

    implicitWidth: 200
    implicitHeight: Math.max(40, implicitContentHeight + 10)
    focusPolicy: Qt.StrongFocus
    Accessible.role: Accessible.Link
    Accessible.name: text
    Accessible.selected: here
    Keys.onReturnPressed: root.clicked()

    contentItem: Text {
        text: root.text
        color: root.here || root.hovered ? Theme.ink : Theme.muted
        font.family: Theme.textFamily
        font.pixelSize: Theme.body
        font.weight: root.here ? Font.DemiBold : Font.Normal
        verticalAlignment: Text.AlignVCenter
        wrapMode: Text.Wrap
    }
    background: Item {
        FocusRing {
            anchors.leftMargin: -10
            anchors.rightMargin: -6
            anchors.topMargin: 0
            anchors.bottomMargin: 0
            shown: root.visualFocus
        }
    }
}
