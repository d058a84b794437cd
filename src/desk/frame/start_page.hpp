// SPDX-License-Identifier: GPL-3.0-or-later
// Where a gym comes from when none is open: the demonstration, an empty one, a bundle, another
// file. When a file could not be opened, it says what happened and what to do.
#pragma once
#include "blockwright/model/message.hpp"

#include <QWidget>

#include <functional>

class QBoxLayout;
class QLabel;
class QLayout;
class QLineEdit;
class QPushButton;

namespace bw {

class StartPage : public QWidget {
    Q_OBJECT
public:
    explicit StartPage(QWidget* parent);

    void tell(const Message& trouble);
    // A way on under what was just told; goes with the next trouble.
    void offer(const QString& words, const std::function<void()>& go);
    // A way back to the gym that is open; empty: none is.
    void offerBack(const QString& gymName);
    [[nodiscard]] QString trouble() const;

Q_SIGNALS:
    void demoWanted();
    void emptyWanted(const QString& name);
    void bundleWanted();
    void otherWanted();
    void backWanted();

private:
    QWidget* makeCard();
    QLayout* heading(QWidget* card);
    void addChoice(QBoxLayout* card, QWidget* before, QPushButton* button, const QString& sentence);

    QLabel* trouble_;
    QLineEdit* name_;
    QPushButton *demo_, *back_, *way_;
};

} // namespace bw
