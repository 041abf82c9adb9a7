import QtQuick

// Ordinary reading text.
Text {
    color: Theme.ink
    font.family: Theme.textFamily
    font.pixelSize: Theme.body
    wrapMode: Text.Wrap
    textFormat: Text.PlainText
    lineHeight: Theme.lineHeight
    // Qt puts all of the extra height below a line; half of it belongs above.
    topPadding: font.pixelSize * (Theme.lineHeight - 1) / 2
    Accessible.role: Accessible.StaticText
    Accessible.name: text
}
