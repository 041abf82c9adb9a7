import QtQuick

// Labels and asides.
Text {
    color: Theme.muted
    font.family: Theme.textFamily
    font.pixelSize: Theme.small
    wrapMode: Text.Wrap
    textFormat: Text.PlainText
    lineHeight: Theme.lineHeight
    Accessible.role: Accessible.StaticText
    Accessible.name: text
}
