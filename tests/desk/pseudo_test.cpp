// SPDX-License-Identifier: GPL-3.0-or-later
// A longer language: at 1280 x 720 every page and dialog still shows all of its texts, and every
// text goes through the translations.
#include "desk/frame/actions.hpp"
#include "desk/frame/help_actions.hpp"
#include "desk/frame/start_page.hpp"
#include "desk/frame/workspace.hpp"
#include "desk/ledger/import_dialog.hpp"
#include "desk/ledger/member_dialog.hpp"
#include "frame_desk.hpp"
#include "longer_language.hpp"
#include "support/catch.hpp"

#include <QAbstractButton>
#include <QAbstractScrollArea>
#include <QApplication>
#include <QComboBox>
#include <QDialog>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <QMenuBar>
#include <QRegularExpression>
#include <QTest>
#include <QTextDocumentFragment>
#include <QTimer>

namespace bw::test {

namespace {
// Names of ours, keys, units and shorthand are the same in every language.
const char* const kSame =
    "Blockwright|English|Deutsch|Saltmarsh|Boathouse|Ctrl|Shift|Alt|Esc|Del|Enter|Qt|PDF|RIR|RPE|"
    "min|kg|lb|side|rest|reps|kcal|bwgym|csv|Letter|OK";

QString plainText(const QString& text) {
    QString plain = text;
    if (Qt::mightBeRichText(text)) plain = QTextDocumentFragment::fromHtml(text).toPlainText();
    return plain.remove(QLatin1Char('&'));
}

// The names that the coach gave, and what the machine says of itself and of the days.
QStringList namesIn(const Gym& gym) {
    QStringList names{QString::fromStdString(gym.settings.name)};
    const auto add = [&](const std::string& name) { names << QString::fromStdString(name); };
    for (const auto& entry : gym.shelf.entries()) {
        add(entry->name);
        for (const std::string& line : entry->cues) add(line);
        for (const std::string& line : entry->cautions) add(line);
    }
    for (const KitItem& item : gym.kit) add(item.name);
    for (const Member& member : gym.members) add(member.name);
    for (const auto& [month, block] : gym.blocks) add(block->title);
    for (const auto format : {QLocale::LongFormat, QLocale::ShortFormat}) {
        for (int m = 1; m <= 12; ++m) names << QLocale().standaloneMonthName(m, format);
        for (int day = 1; day <= 7; ++day) names << QLocale().dayName(day, format);
    }
    names << versionBlock().split(u'\n');
    names.removeAll(QString());
    std::sort(names.begin(), names.end(),
              [](const QString& a, const QString& b) { return a.size() > b.size(); });
    return names;
}

class Looking {
public:
    explicit Looking(QStringList names) : names_(std::move(names)) {}

    void at(QWidget& window) {
        for (QWidget* w : window.findChildren<QWidget*>()) {
            if (!w->isVisibleTo(&window) || w->window() != &window || w->size().isEmpty()) continue;
            if (const auto* button = qobject_cast<QAbstractButton*>(w)) look(*button);
            if (const auto* label = qobject_cast<QLabel*>(w)) look(*label);
            if (const auto* box = qobject_cast<QComboBox*>(w)) look(*box);
            if (const auto* line = qobject_cast<QLineEdit*>(w)) look(*line);
            if (const auto* header = qobject_cast<QHeaderView*>(w)) look(*header);
            inside(*w, window);
        }
        translated(window, window.windowTitle());
    }
    int seen = 0;

    void translated(const QWidget& w, const QString& text) {
        QString left = LongerLanguage::untranslated(plainText(text));
        for (const QString& name : names_) left.remove(name, Qt::CaseInsensitive);
        static const QRegularExpression same(
            QStringLiteral("\\b(%1)\\b").arg(QLatin1String(kSame)));
        static const QRegularExpression word(QStringLiteral("[^\\W\\d_]{3}"));
        left.remove(same);
        INFO(where(w) << ": " << text.toStdString() << " leaves " << left.toStdString());
        CHECK_FALSE(left.contains(word));
        ++seen;
    }

private:
    static std::string where(const QWidget& w) {
        std::string chain;
        for (const QObject* o = &w; o; o = o->parent())
            chain += std::string(o->metaObject()->className()) + '#' +
                     o->objectName().toStdString() + " < ";
        return chain;
    }
    // What is cut off must say the whole in its tool tip.
    static void roomFor(const QWidget& w, const QString& text, QSize need, QSize has) {
        INFO(where(w) << ": " << text.toStdString() << " needs " << need.width() << 'x'
                      << need.height() << ", has " << has.width() << 'x' << has.height());
        CHECK((w.toolTip().size() >= text.size() ||
               (need.width() <= has.width() && need.height() <= has.height() + 2)));
    }
    void look(const QAbstractButton& b) {
        translated(b, b.text());
        translated(b, b.toolTip());
        if (!b.text().isEmpty()) roomFor(b, b.text(), b.minimumSizeHint(), b.size());
    }
    void look(const QLabel& l) {
        translated(l, l.text());
        if (l.text().isEmpty()) return;
        const QSize has = l.contentsRect().size();
        if (l.wordWrap())
            roomFor(l, l.text(), QSize(0, l.heightForWidth(l.width())), l.size());
        else
            roomFor(l, l.text(), l.minimumSizeHint(), has + (l.size() - has));
    }
    // Qt itself cuts these short with three dots.
    void look(const QComboBox& c) {
        for (int i = 0; i < c.count(); ++i) translated(c, c.itemText(i));
    }
    void look(const QLineEdit& l) {
        translated(l, l.placeholderText());
        translated(l, l.accessibleName());
    }
    void look(const QHeaderView& h) {
        for (int i = 0; h.orientation() == Qt::Horizontal && i < h.count(); ++i)
            translated(h, h.model()->headerData(i, Qt::Horizontal).toString());
    }
    static void inside(const QWidget& w, const QWidget& window) {
        for (const QWidget* p = w.parentWidget(); p && p != &window; p = p->parentWidget())
            if (qobject_cast<const QAbstractScrollArea*>(p)) return;
        INFO(where(w));
        const QRect place(w.mapTo(&window, QPoint()), w.size());
        CHECK(window.rect().contains(place));
    }
    QStringList names_;
};

// What a dialog that blocks shows, and away with it.
void lookAtDialog(Looking& looking, const std::function<void()>& open) {
    int found = 0;
    QTimer::singleShot(0, [&] {
        QWidget* dialog = QApplication::activeModalWidget();
        if (!dialog) return;
        ++found;
        looking.at(*dialog);
        CHECK(dialog->width() <= 1280);
        CHECK(dialog->height() <= 720);
        dialog->close();
    });
    open();
    QCoreApplication::processEvents();
    CHECK(found == 1);
}
} // namespace

TEST_CASE("The longer language lengthens and marks a text, and keeps its gaps and key") {
    CHECK(LongerLanguage::longer(QStringLiteral("&Start %1 now")) ==
          QStringLiteral("[&Stárt %1 ñów~~~~]"));
    CHECK(LongerLanguage::longer(QStringLiteral(" or ")) == QStringLiteral(" [ór] "));
    CHECK(LongerLanguage::untranslated(QStringLiteral("a [b [c] d] e [f")) ==
          QStringLiteral("a  e [f"));
}

TEST_CASE("In a longer language every page fits 1280 x 720, and no text is left in English") {
    const LongerLanguage spoken;
    FrameDesk d;
    Looking start({QStringLiteral("Saltmarsh Boathouse")});
    start.at(d.window);
    CHECK(start.seen > 6);
    d.window.openDemo();
    d.window.resize(1280, 720);
    d.settle();
    Looking looking(namesIn(d.gym()));
    for (const auto& entry : d.window.actions().all())
        looking.translated(d.window, entry.group + u' ' + entry.action->text());
    for (const QAction* menu : d.window.menuBar()->actions())
        looking.translated(d.window, menu->text());
    for (int place = 1; place <= 8; ++place) {
        if (place < 8)
            d.press(static_cast<Qt::Key>(Qt::Key_0 + place), Qt::AltModifier);
        else
            d.window.actions().find(QStringLiteral("house-limits"))->trigger();
        QTest::qWait(100); // what is painted or counted beside the page
        INFO(d.work().page()->metaObject()->className());
        CHECK(d.window.minimumSizeHint().width() <= 1280);
        CHECK(d.window.minimumSizeHint().height() <= 720);
        CHECK(d.window.width() <= 1280);
        CHECK(d.window.height() <= 720);
        looking.at(d.window);
    }
    CHECK(looking.seen > 200);
}

TEST_CASE("In a longer language every dialog fits, and no text is left in English") {
    const LongerLanguage spoken;
    const Prompts real = prompts(); // before a coach answers them
    FrameDesk d;
    d.openSmallGym();
    Looking looking(namesIn(d.gym()) << QStringLiteral("member") << QStringLiteral("exercise")
                                     << QStringLiteral("date") << QStringLiteral("set"));
    for (const char* id : {"keys", "cautions", "about"}) {
        INFO(id);
        const Prompts answers = std::exchange(prompts(), real);
        lookAtDialog(looking, [&] { d.window.actions().find(QLatin1String(id))->trigger(); });
        prompts() = answers;
    }
    const Member member{MemberId::parse("m-1").value(), "Nim", {}, true, {}};
    MemberDialog about(member, false, &d.window);
    about.addFlag({Demand::Overhead, FlagLevel::Avoid, "", {}});
    about.show();
    d.settle();
    looking.at(about);
    ImportDialog table(d.work().gym(), QStringLiteral("table.csv"),
                       "member,date,exercise,set,reps\n", &d.window);
    table.show();
    d.settle();
    looking.at(table);
    CHECK(looking.seen > 30);
}

} // namespace bw::test
