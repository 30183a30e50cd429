#include "qml/handover/signatureview.h"

#include "core/journal/sayclosing.h"
#include "qml/shell/words.h"

#include <QBuffer>
#include <QPointer>

#include <array>
#include <span>

namespace undercowl::ui {

void SignatureView::show(const Snapshot& snapshot) {
    owner_ = text(snapshot.owner.name);
    const auto& signature = snapshot.job.signature;
    signedBy_ = signature
                    ? tr("%1, %2").arg(text(signature->name), when(signature->said.at, session()->now()))
                    : QString();
    picture_ = signature ? session()->mediaUrl(text(signature->media)) : QUrl();
}

void SignatureView::keep(SignaturePad* pad, FormDraft* draft) {
    if (draft == nullptr)
        return;
    const QString name = draft->text(QStringLiteral("name"));
    QVariantMap errors;
    if (utf8(name).empty())
        errors[QStringLiteral("name")] = tr("Type who signs.");
    if (pad == nullptr || pad->empty())
        errors[QStringLiteral("pad")] = tr("Sign in the field with a finger.");
    setErrors(errors);
    if (!errors.isEmpty())
        return;
    QByteArray png;
    QBuffer buffer(&png);
    if (!buffer.open(QIODevice::WriteOnly) || !pad->picture().save(&buffer, "PNG")) {
        session()->tell(tr("The signature cannot be made into a picture. Sign once more."));
        return;
    }
    job::Signature signature{session()->newId(), utf8(name), {}, {}};
    session()->sayFrom(
        [signature, png, job = jobId()](ShopStore& store) mutable -> Entries {
            const auto media = store.keepMedia(
                std::as_bytes(std::span(png.constData(), static_cast<std::size_t>(png.size()))), "png");
            if (!media)
                return tl::unexpected(media.error());
            signature.media = media->name;
            return store.append(std::array{journal::ownerSigned(job, signature)});
        },
        {.undoText = tr("Signed"), .form = draft->form()},
        [this, self = QPointer(this)](const Entries& said) {
            if (said && self != nullptr)
                emit kept();
        });
}

} // namespace undercowl::ui
