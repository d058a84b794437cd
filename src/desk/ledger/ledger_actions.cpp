// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/ledger/ledger_actions.hpp"

#include "desk/frame/actions.hpp"
#include "desk/frame/backing_up.hpp"
#include "desk/frame/notice.hpp"
#include "desk/frame/prompts.hpp"
#include "desk/frame/whole_file.hpp"
#include "desk/frame/words.hpp"
#include "desk/frame/work_line.hpp"
#include "desk/ledger/day_bar.hpp"
#include "desk/ledger/import_dialog.hpp"
#include "desk/ledger/ledger_page.hpp"
#include "desk/ledger/ledger_words.hpp"
#include "desk/ledger/member_dialog.hpp"
#include "desk/ledger/member_panel.hpp"
#include "edit/member_verbs.hpp"
#include "interchange/results_csv.hpp"

#include <QAction>
#include <QFileInfo>
#include <QMenu>

namespace bw {

namespace {
QString tableFilter() { return LedgerActions::tr("Tables (*.csv *.tsv *.txt);;All files (*)"); }
} // namespace

LedgerActions::LedgerActions(OpenGym& gym, LedgerPage& page, Actions& actions, Notice& notice,
                             WorkLine& work)
    : QObject(&page), gym_(gym), page_(page), notice_(notice), work_(work) {
    addMembers(actions);
    addResults(actions);
    connect(&page.panel(), &MemberPanel::editWanted, this, &LedgerActions::editMember);
    connect(&page, &LedgerPage::memberChanged, this, &LedgerActions::follow);
    follow();
}

void LedgerActions::addMembers(Actions& actions) {
    const auto add = [&](const char* id, const QString& text, const QList<QKeySequence>& keys,
                         void (LedgerActions::*run)()) {
        return actions.add(tr("Ledger"), QLatin1String(id), text, keys, &page_,
                           [this, run] { (this->*run)(); });
    };
    QAction* fresh = add("add-member", tr("&Add a member…"), {Qt::CTRL | Qt::SHIFT | Qt::Key_M},
                         &LedgerActions::addMember);
    fresh->setEnabled(gym_.file().writable());
    Actions::explain(fresh, tr("read-only"));
    edit_ = add("edit-member", tr("&Name and flags…"), {Qt::CTRL | Qt::Key_E},
                &LedgerActions::editMember);
    write_ = add("write-member", tr("&Write all of this member…"), {}, &LedgerActions::writeMember);
    erase_ = add("erase-member", tr("&Erase this member…"), {}, &LedgerActions::eraseMember);
    QMenu& members = page_.bar().members();
    members.addActions({fresh, edit_});
    members.addSeparator();
    members.addActions({write_, erase_});
}

void LedgerActions::addResults(Actions& actions) {
    QAction* in =
        actions.add(tr("Ledger"), QStringLiteral("bring-in-table"), tr("&Bring in a table…"),
                    {Qt::CTRL | Qt::Key_I}, &page_, [this] { bringIn(); });
    in->setEnabled(gym_.file().writable());
    Actions::explain(in, tr("read-only"));
    QAction* out = actions.add(tr("Ledger"), QStringLiteral("write-table"),
                               tr("&Write all as a table…"), {}, &page_, [this] { writeTable(); });
    page_.bar().results().addActions({in, out});
}

void LedgerActions::follow() {
    const bool member = page_.member();
    const bool writable = gym_.file().writable();
    write_->setEnabled(member);
    for (QAction* verb : {edit_, erase_}) verb->setEnabled(member && writable);
    for (QAction* verb : {edit_, write_, erase_})
        Actions::explain(verb, member ? tr("read-only") : tr("no member is chosen"));
}

void LedgerActions::addMember() {
    auto fresh = newMember(gym_.gym(), "?");
    Member blank = std::move(fresh).value();
    blank.name.clear();
    MemberDialog dialog(blank, true, page_.window());
    if (dialog.exec() != QDialog::Accepted) return;
    const Member made = dialog.member();
    if (notice_.hear(putMember(gym_, made))) page_.goTo(made.id);
}

void LedgerActions::editMember() {
    const Member* member = page_.member();
    if (!member) return;
    MemberDialog dialog(*member, false, page_.window());
    if (dialog.exec() == QDialog::Accepted) notice_.hear(putMember(gym_, dialog.member()));
}

void LedgerActions::writeMember() {
    const Member* member = page_.member();
    if (!member) return;
    const auto file = prompts().saveFile(&page_, tr("Write all of %1").arg(plain(member->name)),
                                         plain(member->id.text()) + QLatin1String(".bundle.json"),
                                         tr("Bundles (*.bundle.json *.json);;All files (*)"));
    if (!file) return;
    const auto bundle = bundleOfMember(gym_, member->id);
    if (notice_.hear(bundle)) notice_.hear(writeWhole(*file, writeBundle(*bundle)));
}

namespace {
// Backups are left as they are.
QString stillIn(const GymFile& file, const MemberId& member) {
    const auto holding = backupsHolding(file.path(), member);
    if (!holding || holding->empty()) return {};
    return LedgerActions::tr("\n\n%n backup(s) hold the member, or can't be read. To be rid of "
                             "them, too, delete them from %1.",
                             nullptr, static_cast<int>(holding->size()))
        .arg(QString::fromStdString(backupFolder(file.path()).string()));
}
} // namespace

void LedgerActions::eraseMember() {
    const Member* member = page_.member();
    if (!member) return;
    const MemberId id = member->id;
    const auto traces = tracesOf(gym_.file(), id);
    if (!notice_.hear(traces)) return;
    QString results = tr("no results");
    if (traces->results > 0)
        results = tr("all %1 sets from %2 to %3")
                      .arg(QString::number(traces->results), dayText(*traces->first),
                           dayText(*traces->last));
    const int chosen = prompts().choose(
        page_.window(), tr("Erase a member"),
        tr("%1 will be taken out of this gym file for good and overwritten: the name, flags and "
           "their notes, and ")
                .arg(plain(member->name)) +
            results +
            tr(".\n\nThis can't be undone, and what was done before can't be undone after it. "
               "Copies, bundles and tables that were written before still hold the member.") +
            stillIn(gym_.file(), id),
        {tr("Erase %1").arg(plain(member->name))});
    if (chosen == 0) notice_.hear(bw::eraseMember(gym_, id));
}

void LedgerActions::bringIn() {
    const auto file =
        prompts().openFile(page_.window(), tr("Bring in a table of results"), tableFilter());
    if (!file) return;
    const auto text = readWhole(*file, kMostCsvBytes);
    if (!notice_.hear(text)) return;
    ImportDialog dialog(gym_, QFileInfo(*file).fileName(), *text, page_.window());
    if (dialog.exec() != QDialog::Accepted) return;
    const auto kept = backUpBefore(gym_.file(), BackupReason::Import);
    if (notice_.hear(dialog.store())) notice_.hear(kept);
}

// A part of the table after the other, so that the years need no room.
void LedgerActions::writeTable() {
    const auto file = prompts().saveFile(page_.window(), tr("Write all results as a table"),
                                         tr("results.csv"), tableFilter());
    if (!file) return;
    std::vector<MemberId> members;
    for (const Member& m : gym_.gym().members) members.push_back(m.id);
    WorkLine::Run run(work_, tr("Writing results"), static_cast<int>(members.size()));
    ResultsWriter table(gym_.gym());
    std::size_t at = 0;
    notice_.hear(writeParts(*file, [&]() -> Result<std::string> {
        std::string part = table.take(); // at first the words of the columns
        while (part.empty() && at < members.size()) {
            const auto results = gym_.file().resultsOf(members[at++]);
            if (!results) return results.why();
            for (const LiftResult& r : *results) table.add(r);
            part = table.take();
            if (!run.at(static_cast<int>(at)))
                return Message{"Stopped. Nothing was written; a table that was there before is "
                               "still there.",
                               {}};
        }
        return part;
    }));
}

} // namespace bw
