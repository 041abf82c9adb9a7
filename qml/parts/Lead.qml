import QtQuick

// The sentence under the headline.
Text {
    color: Theme.muted
    font.family: Theme.textFamily
    font.pixelSize: Theme.lead
    wrapMode: Text.Wrap
    textFormat: Text.PlainText
    lineHeight: Theme.lineHeight
    Accessible.role: Accessible.StaticText
    Accessible.name: text
}
