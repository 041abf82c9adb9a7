import QtQuick
import QtQuick.Controls.Basic

// The one main action of a page. When it cannot act it stays readable and says why underneath.
Column {
    id: root

    required property string text
    property string reason: ""
    property bool big: false
    // Whether it says itself what it waits for; where somebody else does, it only speaks it.
    property bool tells: true
    property alias button: button
    readonly property bool ready: reason === ""

    signal acted()

    spacing: 8

    Button {
        id: button

        objectName: root.objectName + "Button"
        text: root.text
        leftPadding: root.big ? 48 : 28
        rightPadding: leftPadding
        implicitHeight: Math.max(root.big ? 84 : 52, Theme.target, implicitContentHeight + 20)
        implicitWidth: Math.max(root.big ? 300 : 200, implicitContentWidth + leftPadding + rightPadding)
        width: Math.min(implicitWidth, root.parent ? root.parent.width : implicitWidth)
        focusPolicy: Qt.StrongFocus
        Accessible.role: Accessible.Button
        Accessible.name: root.text
        Accessible.description: root.reason
        Keys.onReturnPressed: button.clicked()
        Keys.onEnterPressed: button.clicked()
        onClicked: if (root.ready) root.acted()

        contentItem: Text {
            text: button.text
            color: root.ready ? Theme.accentText : Theme.muted
            font.family: Theme.textFamily
            font.pixelSize: root.big ? Theme.title : Theme.body
            font.weight: Font.DemiBold
            horizontalAlignment: Text.AlignHCenter
            verticalAlignment: Text.AlignVCenter
            wrapMode: Text.Wrap
            textFormat: Text.PlainText
        }
        background: Rectangle {
            radius: root.big ? 12 : Theme.radius
            color: root.ready ? (button.down ? Theme.ink : Theme.accent) : Theme.soft

            FocusRing {
                corner: parent.radius
                shown: button.visualFocus
            }
        }
    }
    Small {
        width: Math.min(480, root.parent ? root.parent.width : 480)
        visible: !root.ready && root.tells
        text: root.reason
    }
}
