import QtQuick

// Scrolls a page so that the part that holds the keyboard is never out of sight.
Item {
    id: root

    required property Flickable flick
    required property Item column

    function show(item: Item) {
        const top = item.mapToItem(column, 0, 0).y + column.y;
        if (top < flick.contentY + 20)
            flick.contentY = Math.max(0, top - 60);
        else if (top + item.height > flick.contentY + flick.height - 60)
            flick.contentY = Math.min(Math.max(0, flick.contentHeight - flick.height), top + item.height - flick.height + 100);
    }

    Connections {
        target: root.Window.window
        function onActiveFocusItemChanged() {
            const item = root.Window.activeFocusItem;
            for (let up = item; up; up = up.parent) {
                if (up === root.column) {
                    root.show(item);
                    return;
                }
            }
        }
    }
}
