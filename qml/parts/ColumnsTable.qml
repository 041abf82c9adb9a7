pragma ComponentBehavior: Bound
import QtQuick

// Things side by side in columns, told row by row. Where they do not all fit beside each other they come in blocks, one below the other.
Column {
    id: root

    // Names of the columns, the first being that of the labels.
    required property var headers
    // A list of rows with `label`, `cells` and `spoken`.
    required property var rows
    readonly property real labelWidth: Math.min(150 * Theme.scale, width * 0.35)
    readonly property int most: Math.max(1, Math.floor((width - labelWidth) / (150 * Theme.scale)))
    readonly property int blocks: Math.ceil(Math.max(1, headers.length - 1) / most)

    spacing: 20

    Repeater {
        model: root.blocks

        Column {
            id: block

            required property int index
            readonly property int first: index * root.most
            readonly property int count: Math.min(root.most, root.headers.length - 1 - first)
            readonly property real cell: (root.width - root.labelWidth) / Math.max(1, count)

            width: root.width
            Accessible.role: Accessible.List
            Accessible.name: root.headers.slice(1 + first, 1 + first + count).join(", ")

            Row {
                width: block.width

                Item {
                    width: root.labelWidth
                    height: 1
                }
                Repeater {
                    model: root.headers.slice(1 + block.first, 1 + block.first + block.count)

                    Body {
                        required property string modelData

                        width: block.cell
                        rightPadding: 12
                        bottomPadding: 6
                        text: modelData
                        font.weight: Font.DemiBold
                    }
                }
            }
            Repeater {
                model: root.rows

                Column {
                    id: line

                    required property string label
                    required property var cells
                    required property string spoken

                    width: block.width
                    Accessible.role: Accessible.ListItem
                    Accessible.name: spoken

                    HairLine {
                        width: parent.width
                    }
                    Row {
                        width: parent.width
                        topPadding: 6
                        bottomPadding: 6

                        Small {
                            width: root.labelWidth
                            rightPadding: 12
                            text: line.label
                            Accessible.ignored: true
                        }
                        Repeater {
                            model: line.cells.slice(block.first, block.first + block.count)

                            Body {
                                required property string modelData

                                width: block.cell
                                rightPadding: 12
                                text: modelData
                                Accessible.ignored: true
                            }
                        }
                    }
                }
            }
        }
    }
}
