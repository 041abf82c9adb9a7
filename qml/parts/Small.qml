import QtQuick

// Labels and asides.
Text {
    color: Theme.muted
    font.family: Theme.textFamily
    font.pixelSize: Theme.small
    wrapMode: Text.Wrap
    textFormat: Text.PlainText
    lineHeight: Theme.lineHeight
    // Qt puts all of the extra height below a line; half of it belongs above.
    topPadding: font.pixelSize * (Theme.lineHeight - 1) / 2
    Accessible.role: Accessible.StaticText
    Accessible.name: text
}
