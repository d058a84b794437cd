// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/frame/trouble.hpp"

#include "desk/frame/theme.hpp"

#include <QAccessible>
#include <QLabel>

namespace bw {

void tellTrouble(QLabel& label, const QString& what) {
    label.setText(levelShape(Level::Look) + QLatin1Char(' ') + what);
    QPalette p = label.palette();
    for (const auto role : {QPalette::WindowText, QPalette::Text}) // on the desk, on paper
        p.setColor(role, inks().level[static_cast<std::size_t>(Level::Look)]);
    label.setPalette(p);
    label.show();
    QAccessibleEvent alert(&label, QAccessible::Alert);
    QAccessible::updateAccessibility(&alert);
}

} // namespace bw
