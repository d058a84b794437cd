// SPDX-License-Identifier: GPL-3.0-or-later
// What may be chosen for a sheet: paper, how it is held, ink, print, units, cards to a page.
#pragma once
#include "sheets/sheet_options.hpp"

#include <QWidget>

class QCheckBox;
class QComboBox;
class QFormLayout;

namespace bw {

class SheetForm : public QWidget {
    Q_OBJECT
public:
    explicit SheetForm(QWidget* parent);

    void show(SheetKind kind, const SheetOptions& options); // tells nobody
    // Of what is on the form; the rest as in `usual`.
    [[nodiscard]] SheetOptions options(SheetOptions usual) const;

Q_SIGNALS:
    void changed(); // by the coach

private:
    QFormLayout* form_;
    QComboBox *paper_, *turned_, *unit_, *perPage_;
    QCheckBox *blackAndWhite_, *largePrint_;
};

} // namespace bw
