import QtQuick

// The biggest thing on a page: what it says.
Text {
    color: Theme.ink
    font.family: Theme.displayFamily
    font.pixelSize: Theme.headline
    font.weight: Font.DemiBold
    wrapMode: Text.Wrap
    textFormat: Text.PlainText
    lineHeight: 1.15
    Accessible.role: Accessible.Heading
    Accessible.name: text
}
