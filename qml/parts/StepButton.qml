import QtQuick
import QtQuick.Controls.Basic

// One of the two small buttons beside a number.
AbstractButton {
    id: root

    required property string spoken

    implicitWidth: Math.max(Theme.target, 44)
    implicitHeight: implicitWidth
    focusPolicy: Qt.StrongFocus
    autoRepeat: true
    Accessible.role: Accessible.Button
    Accessible.name: spoken
    Keys.onReturnPressed: root.clicked()

    contentItem: Text {
        text: root.text
        color: Theme.accent
        font.family: Theme.textFamily
        font.pixelSize: Theme.title
        horizontalAlignment: Text.AlignHCenter
        verticalAlignment: Text.AlignVCenter
    }
    background: Rectangle {
        radius: Theme.radius
        color: root.down ? Theme.soft : "transparent"
        border.width: 1
        border.color: Theme.hair

        FocusRing {
            anchors.margins: -2
            shown: root.visualFocus
        }
    }
}
