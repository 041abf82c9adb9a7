import QtQuick
import QtQuick.Controls.Basic

// Several lines to type in. Tab leaves it, as everywhere.
Column {
    id: root

    required property string label
    property string error: ""
    property string hint: ""
    property alias text: input.text
    property alias input: input
    property real lines: 3

    signal typed(string text)

    spacing: 6

    Small {
        width: root.width
        text: root.label
        color: root.error === "" ? Theme.muted : Theme.attention
    }
    TextArea {
        id: input

        objectName: root.objectName + "Input"
        width: root.width
        implicitHeight: Math.max(Theme.body * Theme.lineHeight * root.lines + 28, contentHeight + 28)
        leftPadding: 14
        rightPadding: 14
        topPadding: 12
        color: Theme.ink
        selectionColor: Theme.accent
        selectedTextColor: Theme.accentText
        font.family: Theme.textFamily
        font.pixelSize: Theme.body
        wrapMode: TextEdit.Wrap
        textFormat: TextEdit.PlainText
        selectByMouse: true
        KeyNavigation.priority: KeyNavigation.BeforeItem
        Accessible.name: root.label
        Accessible.description: root.error === "" ? root.hint : root.error
        Keys.onTabPressed: nextItemInFocusChain(true).forceActiveFocus(Qt.TabFocusReason)
        Keys.onBacktabPressed: nextItemInFocusChain(false).forceActiveFocus(Qt.BacktabFocusReason)
        onTextChanged: if (activeFocus) root.typed(text)

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
