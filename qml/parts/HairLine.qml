import QtQuick

// A line between parts of a page.
Rectangle {
    implicitWidth: 100
    implicitHeight: 1
    color: Theme.hair
}
