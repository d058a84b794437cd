// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/backups/backup_preview.hpp"

#include "desk/backups/backup_words.hpp"
#include "desk/frame/remembered.hpp"
#include "desk/frame/theme.hpp"
#include "desk/frame/words.hpp"
#include "desk/ledger/ledger_words.hpp"

#include <QEvent>
#include <QLocale>

#include <functional>

namespace bw {

namespace {
using Contents = Result<BackupContents>;

QString para(const QString& text, const QString& style = {}) {
    return QStringLiteral("<p style=\"margin:0 0 6px 0;%1\">%2</p>")
        .arg(style, text.toHtmlEscaped());
}
QString head(const QString& text) {
    return para(text, QStringLiteral("font-weight:600;margin-top:8px"));
}
QString quiet(const QString& text) {
    return para(text, QStringLiteral("color:%1").arg(inks().quiet.name()));
}
QString warning(const QString& text) {
    return para(
        levelShape(Level::Look) + QLatin1Char(' ') + text,
        QStringLiteral("color:%1").arg(inks().level[static_cast<std::size_t>(Level::Look)].name()));
}

QString number(std::size_t n) { return QLocale().toString(static_cast<qulonglong>(n)); }
QString months(const BackupContents& c) {
    if (!c.firstMonth || !c.lastMonth) return number(c.months);
    const QString first = monthName(*c.firstMonth), last = monthName(*c.lastMonth);
    if (first == last) return BackupPreview::tr("%1: %2").arg(number(c.months), first);
    return BackupPreview::tr("%1: %2 to %3").arg(number(c.months), first, last);
}
QString newest(const BackupContents& c) {
    return c.newestResult ? dayText(*c.newestResult) : QStringLiteral("–");
}

QString cell(const QString& text, const char* tag, const QColor& color) {
    return QStringLiteral("<%1 align=\"left\" style=\"padding:2px 14px 2px 0;font-weight:normal;"
                          "color:%2\">%3</%1>")
        .arg(QLatin1String(tag), color.name(), text.toHtmlEscaped());
}
QString row(const QString& what, const BackupLook& look,
            const std::function<QString(const BackupContents&)>& words) {
    const auto side = [&](const Contents& c) {
        return cell(c ? words(*c) : QStringLiteral("–"), "td", inks().ink);
    };
    return QStringLiteral("<tr>") + cell(what, "th", inks().quiet) + side(look.in) +
           side(look.now) + QStringLiteral("</tr>");
}

QString table(const BackupLook& look) {
    using C = BackupContents;
    return QStringLiteral("<table cellspacing=\"0\" style=\"margin:6px 0 8px 0\"><tr>") +
           cell({}, "th", inks().quiet) +
           cell(BackupPreview::tr("this backup"), "th", inks().quiet) +
           cell(BackupPreview::tr("the gym file now"), "th", inks().quiet) +
           QStringLiteral("</tr>") +
           row(BackupPreview::tr("Gym"), look, [](const C& c) { return plain(c.gym); }) +
           row(BackupPreview::tr("Months"), look, months) +
           row(BackupPreview::tr("Exercises"), look,
               [](const C& c) { return number(c.exercises); }) +
           row(BackupPreview::tr("Members"), look, [](const C& c) { return number(c.members); }) +
           row(BackupPreview::tr("Results"), look, [](const C& c) { return number(c.results); }) +
           row(BackupPreview::tr("Newest result"), look, newest) +
           row(BackupPreview::tr("Format"), look,
               [](const C& c) { return QString::number(c.version); }) +
           QStringLiteral("</table>");
}

QString listed(const QString& title, const QStringList& lines) {
    if (lines.isEmpty()) return {};
    QString html = head(title);
    for (const QString& line : lines) html += para(line);
    return html;
}

QString effect(const BackupLook& look) {
    if (!look.now)
        return warning(
            BackupPreview::tr("The gym file can't be read now: %1").arg(say(look.now.why())));
    if (!look.would)
        return quiet(BackupPreview::tr(
            "They can't be compared line by line: one is of an earlier format, or holds what this "
            "Blockwright can't read."));
    if (!look.would->any())
        return head(BackupPreview::tr("Nothing would change: the gym file holds the same."));
    const DifferenceWords words = differenceWords(*look.would);
    return listed(BackupPreview::tr("Would go"), words.gone) +
           listed(BackupPreview::tr("Would change"), words.changed) +
           listed(BackupPreview::tr("Would come back"), words.back);
}

QString contents(const BackupLook& look) {
    if (!look.in)
        return warning(BackupPreview::tr("It can't be restored. %1").arg(say(look.in.why()))) +
               quiet(BackupPreview::tr("Choose another one."));
    QString html = table(look);
    if (!look.in->asMade)
        html += warning(BackupPreview::tr(
            "It reads well, but is not byte for byte as made: somebody changed it, or the disk "
            "did. Look the gym through afterwards."));
    return html + effect(look) +
           quiet(BackupPreview::tr("What is in place now is kept first, in the same folder."));
}
} // namespace

BackupPreview::BackupPreview(QWidget* parent) : QTextBrowser(parent) {
    setAccessibleName(tr("What the backup holds"));
    setFrameShape(NoFrame);
    setOpenLinks(false);
    document()->setDocumentMargin(12);
}

void BackupPreview::showReading(const Backup& backup) {
    backup_ = backup;
    look_.reset();
    draw();
}

void BackupPreview::show(const Backup& backup, const BackupLook& look) {
    backup_ = backup;
    look_ = look;
    draw();
}

void BackupPreview::showNothing() {
    backup_.reset();
    look_.reset();
    draw();
}

void BackupPreview::draw() {
    if (!backup_) return clear();
    setHtml(head(tr("Backup of %1").arg(backupTime(backup_->at))) +
            quiet(pathText(backup_->file.filename())) +
            (look_ ? contents(*look_) : quiet(tr("It is being read…"))));
}

void BackupPreview::changeEvent(QEvent* event) {
    QTextBrowser::changeEvent(event);
    if (event->type() == QEvent::PaletteChange && backup_) draw(); // in other colours
}

} // namespace bw
