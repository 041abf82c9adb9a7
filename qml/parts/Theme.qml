pragma Singleton
import QtQuick

// The tokens of the look: colours, type, space. Tasting pages are neutral grey and know no accent.
QtObject {
    id: theme

    property bool dark: false
    property bool tasting: false
    property real scale: 1
    // The smallest side of something that is tapped with wet hands; the window sets it from the screen.
    property real wetTarget: 56

    readonly property color paper: tasting ? (dark ? "#1a1b1d" : "#ededee") : (dark ? "#15181c" : "#f7f5f0")
    readonly property color sheet: tasting ? (dark ? "#26282b" : "#ffffff") : (dark ? "#1d2126" : "#ffffff")
    readonly property color ink: tasting ? (dark ? "#ededee" : "#1b1c1e") : (dark ? "#eceae4" : "#1d2127")
    readonly property color muted: tasting ? (dark ? "#a9abae" : "#55585d") : (dark ? "#a9b0b8" : "#59616b")
    readonly property color hair: tasting ? (dark ? "#3b3d41" : "#c6c7c9") : (dark ? "#343a41" : "#ddd8cd")
    readonly property color line: tasting ? muted : (dark ? "#6d757e" : "#8b8578")
    readonly property color accent: tasting ? ink : (dark ? "#9bbddc" : "#2e4a62")
    readonly property color accentText: tasting ? paper : (dark ? "#15181c" : "#ffffff")
    readonly property color soft: tasting ? (dark ? "#303236" : "#dfe0e1") : (dark ? "#26313b" : "#e7edf2")
    readonly property color attention: tasting ? ink : (dark ? "#dca6c4" : "#7a2f5b")

    // Where Inter is not installed the program names a substitute.
    readonly property string textFamily: "Inter"
    readonly property string displayFamily: "Inter Display"
    readonly property real lineHeight: 1.35

    readonly property real small: 14 * scale
    readonly property real body: 16 * scale
    readonly property real lead: 20 * scale
    readonly property real title: 22 * scale
    // What is large already grows less, so that the page below it stays in sight.
    readonly property real headline: 36 * Math.min(scale, 1.5)
    readonly property real code: 96 * Math.min(scale, 1.5)

    readonly property real target: tasting ? wetTarget : 40
    readonly property real column: 860
    readonly property real gap: 4
    readonly property real radius: 8
    readonly property real wideRadius: 16
    readonly property real ring: 3
}
