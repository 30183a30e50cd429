// Not built or tried yet (README.md).
#include "platform/sharing.h"

#include <QCoreApplication>

#import <UIKit/UIKit.h>

namespace undercowl::platform {

bool hasShareSheet() {
    return true;
}

QString showFile(const QString& file) {
    return shareFiles({file}, {}); // its sheet shows a PDF or a picture too
}

QString shareFiles(const QStringList& files, const QString& title) {
    NSMutableArray* items = [NSMutableArray array];
    for (const QString& file : files)
        [items addObject:[NSURL fileURLWithPath:file.toNSString()]];
    UIViewController* shown = UIApplication.sharedApplication.delegate.window.rootViewController;
    if (shown == nil)
        return QCoreApplication::translate("Sharing", "The system refused the files. Share them from the system's file manager.");
    UIActivityViewController* sheet = [[UIActivityViewController alloc] initWithActivityItems:items applicationActivities:nil];
    sheet.title = title.toNSString();
    sheet.popoverPresentationController.sourceView = shown.view; // tablets want to know where it comes from
    [shown presentViewController:sheet animated:YES completion:nil];
    return {};
}

} // namespace undercowl::platform
