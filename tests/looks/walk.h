// Looks at every item that is seen in a window and says what a gloved thumb or a far eye would complain
// about.
#pragma once

#include <QQuickWindow>
#include <QStringList>

namespace undercowl::looks {

// What a page is measured by. Sizes in dp, of which 6.4 are a millimetre.
struct Measures {
    qreal touch{48}; // of a target, either way; at the lift its width
    qreal gap{8};    // between targets, so that a thumb on the edge of one does not press the other
    // At the lift, for gloves; 0 elsewhere. The head's buttons are actions like any.
    qreal action{}; // height of an action
    qreal main{};   // height of the main one
    qreal key{};    // height of a key of a keypad or a picker
};

// Those of a page in a window of that size.
[[nodiscard]] Measures measuresOf(bool atTheLift, QSize window);

// One line for each fault: words that are cut or run over their item, words and targets that reach past the
// window's sides, targets that are too small (all this of what the page holds behind its scroll edge too,
// which scrolls into view), targets that lie on one another or too close together, more than six actions
// beside a keypad or a picker, targets without a name or role for a screen reader, words smaller than 15 dp.
// Empty when there is none.
[[nodiscard]] QStringList faultsOf(QQuickWindow& window, const Measures& by);

// The same while a letter is typed into each text field that is seen, one after the other.
[[nodiscard]] QStringList faultsWhileTyping(QQuickWindow& window, const Measures& by);

// Words that have less contrast with what they stand on, as it is drawn, than 'least' (WCAG 2.1).
[[nodiscard]] QStringList palenessOf(QQuickWindow& window, qreal least);

// What is seen and can be touched, and no Tab leads to.
[[nodiscard]] QStringList unreachedOf(QQuickWindow& window);

} // namespace undercowl::looks
