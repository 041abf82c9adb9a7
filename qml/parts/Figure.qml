pragma ComponentBehavior: Bound
import QtQuick
import Oddglass.Ui

// A figure with its read-out below and, for those who ask, its numbers as lines.
Column {
    id: root

    property alias source: canvas.source
    property bool numbersShown: false

    spacing: 8
    visible: source.drawn

    FigureCanvas {
        id: canvas

        width: root.width
        height: implicitHeight
        textScale: Theme.scale
        ink: Theme.ink
        muted: Theme.muted
        hair: Theme.line
        accent: Theme.accent
        soft: Theme.soft
        Accessible.role: Accessible.Graphic
        Accessible.name: sentence
        Accessible.description: readOut
        Accessible.focusable: true
        objectName: root.objectName + "Canvas"
        activeFocusOnTab: root.source.drawn

        FocusRing {
            shown: canvas.activeFocus
        }
    }
    Small {
        width: root.width
        text: canvas.readOut
        visible: text !== ""
    }
    LinkButton {
        objectName: root.objectName + "Numbers"
        quiet: true
        text: root.numbersShown ? qsTr("Hide the numbers") : qsTr("Show the numbers")
        Accessible.name: qsTr("%1: %2").arg(text).arg(canvas.sentence)
        onClicked: root.numbersShown = !root.numbersShown
    }
    Column {
        width: root.width
        visible: root.numbersShown
        spacing: 2
        Accessible.role: Accessible.List
        Accessible.name: canvas.sentence

        Repeater {
            model: canvas.tableLines

            Body {
                required property string modelData

                width: root.width
                text: modelData
            }
        }
    }
}
