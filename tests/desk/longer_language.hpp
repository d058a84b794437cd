// SPDX-License-Identifier: GPL-3.0-or-later
// A language that nobody speaks: every text of the translations 40 % longer, in brackets and with
// accents, "[Ḟŀøøŕ ~~]". What is without brackets on the screen was not translated.
#pragma once
#include <QSet>
#include <QString>
#include <QTranslator>

namespace bw::test {

class LongerLanguage : public QTranslator {
public:
    LongerLanguage();           // spoken from here on
    ~LongerLanguage() override; // English again
    LongerLanguage(const LongerLanguage&) = delete;
    LongerLanguage& operator=(const LongerLanguage&) = delete;

    QString translate(const char* context, const char* source, const char* remark,
                      int n) const override;
    bool isEmpty() const override { return false; }
    [[nodiscard]] static QString longer(const QString& text);
    // What is left of a text when all that is in brackets is taken out.
    [[nodiscard]] static QString untranslated(QString text);

private:
    QSet<QString> texts_, words_; // the sources of resources/translations/blockwright_de.ts
};

} // namespace bw::test
