// Looks at every item that is seen in a window and says what a gloved thumb or a far eye would complain
// about.
#pragma once

#include <QQuickWindow>
#include <QStringList>

namespace undercowl::looks {

// One line for each fault: words that are cut or run over their item, words and targets that reach past the
// window's sides, targets under 48 dp (but for what the page holds behind its scroll edge, which scrolls into
// view), targets that lie on one another or closer than 8 dp, targets without a name or role for a screen
// reader. Empty when there is none.
[[nodiscard]] QStringList faultsOf(QQuickWindow& window);

} // namespace undercowl::looks
