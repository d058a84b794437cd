// SPDX-License-Identifier: GPL-3.0-or-later
#include "longer_language.hpp"

#include "desk/frame/language.hpp"

#include <QCoreApplication>
#include <QFile>
#include <QHash>
#include <QRegularExpression>
#include <QXmlStreamReader>

#include <cstring>
#include <stdexcept>

namespace bw::test {

namespace {
QChar accented(QChar c) {
    static const QHash<QChar, QChar> accents = [] {
        const QString plain = QStringLiteral("aeiouAEIOUcnsyzgl"),
                      marked = QStringLiteral("áéíóúÁÉÍÓÚčñšýžğŀ");
        QHash<QChar, QChar> all;
        for (int i = 0; i < plain.size(); ++i) all.insert(plain[i], marked[i]);
        return all;
    }();
    return accents.value(c, c);
}
} // namespace

LongerLanguage::LongerLanguage() {
    QFile file(QStringLiteral(BW_SOURCE_DIR "/resources/translations/blockwright_de.ts"));
    if (!file.open(QIODevice::ReadOnly)) throw std::runtime_error("no translations");
    QXmlStreamReader xml(&file);
    QString context;
    while (!xml.atEnd()) {
        if (xml.readNext() != QXmlStreamReader::StartElement) continue;
        if (xml.name() == QLatin1String("name")) context = xml.readElementText();
        if (xml.name() == QLatin1String("source"))
            (context == QLatin1String("words") ? words_ : texts_) << xml.readElementText();
    }
    QCoreApplication::installTranslator(this);
}

LongerLanguage::~LongerLanguage() { QCoreApplication::removeTranslator(this); }

QString LongerLanguage::translate(const char* context, const char* source, const char* remark,
                                  int n) const {
    QString text = QString::fromUtf8(source);
    const bool qts = *context == 'Q' && !texts_.contains(text);
    const auto& known = std::strcmp(context, "words") == 0 ? words_ : texts_;
    if (!qts && !known.contains(text)) return {};
    if (text.contains(QLatin1String("MMM"))) return text; // how a date is written
    if (remark && *remark && !text.contains(QRegularExpression(QStringLiteral("[^\\W\\d]{2}"))))
        return text; // an order of gaps
    return longer(n >= 0 ? text.replace(QLatin1String("%n"), QString::number(n)) : text);
}

QString LongerLanguage::longer(const QString& text) {
    QString out;
    for (qsizetype i = 0; i < text.size(); ++i) {
        const bool mark = i > 0 && (text[i - 1] == u'%' || text[i - 1] == u'&');
        out += mark || text[i] == u'<' ? text[i] : accented(text[i]);
    }
    QString more(std::max<qsizetype>(0, (text.size() * 2 + 4) / 5 - 2), u'~');
    for (qsizetype i = 6; i < more.size() - 1; i += 7) more[i] = u' '; // lines break there
    // What is between blanks at the ends, so that pieces still join.
    const QString core = out.trimmed();
    return out.replace(out.indexOf(core), core.size(), u'[' + core + more + u']');
}

QString LongerLanguage::untranslated(QString text) {
    static const QRegularExpression innermost(QStringLiteral("\\[[^\\[\\]]*\\]"));
    while (text.contains(innermost)) text.remove(innermost);
    return text;
}

} // namespace bw::test
