import QtQuick
import QtQuick.Controls.Basic

// A plain underlined link: every action that is not the main one.
AbstractButton {
    id: root

    property bool danger: false
    property bool quiet: false
    readonly property color tint: danger ? Theme.attention : (quiet ? Theme.muted : Theme.accent)

    implicitWidth: label.implicitWidth + 8
    implicitHeight: Math.max(Theme.target, label.implicitHeight + 8)
    focusPolicy: Qt.StrongFocus
    Accessible.role: Accessible.Button
    Accessible.name: text
    Keys.onReturnPressed: click()
    Keys.onEnterPressed: click()

    contentItem: Item {
        Text {
            id: label

            anchors.verticalCenter: parent.verticalCenter
            width: Math.min(implicitWidth, root.width)
            text: root.text
            color: root.tint
            font.family: Theme.textFamily
            font.pixelSize: Theme.tasting ? Theme.body * 1.125 : Theme.body
            wrapMode: Text.Wrap
            textFormat: Text.PlainText
            font.underline: true
        }
    }
    background: Item {
        FocusRing {
            anchors.margins: -2
            shown: root.visualFocus
        }
    }
}
