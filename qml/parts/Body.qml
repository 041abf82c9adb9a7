import QtQuick

// Ordinary reading text.
Text {
    color: Theme.ink
    font.family: Theme.textFamily
    font.pixelSize: Theme.body
    wrapMode: Text.Wrap
    textFormat: Text.PlainText
    lineHeight: Theme.lineHeight
    Accessible.role: Accessible.StaticText
    Accessible.name: text
}
