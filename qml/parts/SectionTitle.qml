import QtQuick

// Opens a part of a page.
Text {
    color: Theme.ink
    font.family: Theme.textFamily
    font.pixelSize: Theme.body
    font.weight: Font.DemiBold
    wrapMode: Text.Wrap
    textFormat: Text.PlainText
    Accessible.role: Accessible.Heading
    Accessible.name: text
}
