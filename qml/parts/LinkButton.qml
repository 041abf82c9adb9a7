import QtQuick
import QtQuick.Controls.Basic

// A plain underlined link: every action that is not the main one.
AbstractButton {
    id: root

    property bool danger: false
    property bool quiet: false
    readonly property color tint: danger ? Theme.attention : (quiet ? Theme.muted : Theme.accent)

    implicitWidth: implicitContentWidth + 8
    width: parent && parent.width > 0 ? Math.min(implicitWidth, parent.width) : implicitWidth
    implicitHeight: Math.max(Theme.target, implicitContentHeight + 8)
    focusPolicy: Qt.StrongFocus
    Accessible.role: Accessible.Button
    Accessible.name: text
    Keys.onReturnPressed: root.clicked()
    Keys.onEnterPressed: root.clicked()

    contentItem: Text {
        text: root.text
        color: root.tint
        font.family: Theme.textFamily
        font.pixelSize: Theme.tasting ? Theme.body * 1.125 : Theme.body
        font.underline: true
        verticalAlignment: Text.AlignVCenter
        wrapMode: Text.Wrap
        textFormat: Text.PlainText
    }
    background: Item {
        FocusRing {
            anchors.margins: -2
            shown: root.visualFocus
        }
    }
}
