import QtQuick

// One part of What came out: of three pairs its mark and verdict, then count, figure and evidence; of a score sheet a heading and what stands under it.
Column {
    id: root

    required property string shape
    required property string word
    required property string headline
    required property string count
    required property var figure
    required property var second
    required property string evidence

    spacing: 12

    HairLine {
        width: root.width
    }
    Row {
        width: root.width
        spacing: 16

        Item {
            visible: root.shape !== ""
            width: 24
            height: said.font.pixelSize * 1.35

            VerdictMark {
                y: (parent.height - 24) / 2
                scale: 24 / 32
                transformOrigin: Item.TopLeft
                shape: root.shape
            }
        }
        SectionTitle {
            id: said

            objectName: root.objectName + "Headline"
            visible: text !== ""
            width: root.shape === "" ? root.width : root.width - 40
            text: root.headline
            font.pixelSize: Theme.body * 1.25
        }
    }
    Small {
        width: root.width
        visible: root.word !== ""
        text: qsTr("The verdict: %1.").arg(root.word)
    }
    Body {
        width: root.width
        visible: text !== ""
        text: root.count
    }
    Figure {
        objectName: root.objectName + (root.shape === "" ? "Figure" : "Interval")
        width: root.width
        source: root.figure
    }
    Figure {
        objectName: root.objectName + "Second"
        width: root.width
        source: root.second
    }
    Body {
        width: root.width
        visible: text !== ""
        text: root.evidence
    }
}
