pragma ComponentBehavior: Bound
import QtQuick

// A question with a few answers side by side. Arrow keys walk, Space takes, digits take directly.
Column {
    id: root

    property string label: ""
    // A list of strings: the 6.4 checker does not let a QStringList be bound to list<string>.
    required property var options
    property int current: -1
    property string error: ""
    property string hint: ""
    property bool centred: false

    signal chosen(int index)

    spacing: 8

    Small {
        width: root.width
        visible: root.label !== "" && !root.centred
        text: root.label
        color: root.error === "" ? Theme.muted : Theme.attention
    }
    Flow {
        id: flow

        x: root.centred ? Math.max(0, (root.width - width) / 2) : 0
        width: root.centred ? Math.min(root.width, pillsWidth()) : root.width
        spacing: 12

        function pillsWidth(): real {
            let sum = beside.visible ? beside.width + spacing : 0;
            for (let i = 0; i < pills.count; i++) {
                const pill = pills.itemAt(i);
                sum += (pill ? pill.width : 0) + (i > 0 ? spacing : 0);
            }
            return sum + 1;
        }

        // In the middle of a page the question stands beside its answers.
        Body {
            id: beside

            height: Theme.target
            topPadding: 0
            rightPadding: 12
            visible: root.centred && root.label !== ""
            text: root.label
            color: Theme.muted
            font.pixelSize: Theme.body * 1.125
            verticalAlignment: Text.AlignVCenter
        }
        Repeater {
            id: pills

            model: root.options

            OptionPill {
                required property string modelData
                required property int index

                objectName: root.objectName + index
                width: Math.min(implicitWidth, root.width)
                text: modelData
                more: root.label
                chosen: index === root.current
                onClicked: root.chosen(index)
                Keys.onRightPressed: root.walk(index + 1)
                Keys.onLeftPressed: root.walk(index - 1)
                Keys.onPressed: event => root.digit(event)
            }
        }
    }
    Small {
        width: root.width
        visible: text !== ""
        text: root.error === "" ? root.hint : root.error
        color: root.error === "" ? Theme.muted : Theme.attention
    }

    function walk(to: int) {
        const pill = pills.itemAt(to);
        if (pill)
            pill.forceActiveFocus(Qt.TabFocusReason);
    }

    function digit(event: KeyEvent) {
        const index = event.key - Qt.Key_1;
        if (index < 0 || index >= options.length || event.modifiers !== Qt.NoModifier)
            return;
        walk(index);
        chosen(index);
        event.accepted = true;
    }
}
