import QtQuick
import QtQuick.Controls.Basic

// One of a few answers, of which one is taken.
AbstractButton {
    id: root

    property bool chosen: false
    property string more: ""

    implicitWidth: Math.max(96, implicitContentWidth + 48)
    implicitHeight: Math.max(Theme.target, implicitContentHeight + 16)
    focusPolicy: Qt.StrongFocus
    Accessible.role: Accessible.RadioButton
    Accessible.name: text
    Accessible.description: more
    Accessible.checkable: true
    Accessible.checked: chosen
    Keys.onReturnPressed: root.clicked()

    contentItem: Text {
        text: root.text
        color: root.chosen ? Theme.accentText : Theme.ink
        font.family: Theme.textFamily
        font.pixelSize: Theme.tasting ? Theme.body * 1.125 : Theme.body
        horizontalAlignment: Text.AlignHCenter
        verticalAlignment: Text.AlignVCenter
        wrapMode: Text.Wrap
        textFormat: Text.PlainText
    }
    background: Rectangle {
        radius: Math.min(height / 2, 30)
        color: root.chosen ? Theme.accent : Theme.sheet
        border.width: root.chosen ? 0 : 1
        border.color: Theme.line

        FocusRing {
            corner: parent.radius
            shown: root.visualFocus
        }
    }
}
