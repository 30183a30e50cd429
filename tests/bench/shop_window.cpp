// The app on the shop in the folder that is named, up to its first frame or, with "list", to the list of its
// machines.
#include "platform/app/app.h"
#include "platform/early_fonts.h"
#include "tests/bench/first_frame.h"

#include <QGuiApplication>

int main(int argc, char* argv[]) {
    undercowl::platform::EarlyFonts fonts; // as main.cpp of the app
    const QGuiApplication app(argc, argv);
    QGuiApplication::setApplicationName("undercowl");
    if (argc != 2 && argc != 3)
        return 2;
    const undercowl::platform::App shop({.store = argv[1],
                                         .camera = {},
                                         .pictures = {},
                                         .look = {{"width", 412}, {"height", 915}},
                                         .fonts = &fonts});
    if (shop.window() == nullptr)
        return 2;
    if (argc == 3)
        undercowl::bench::endWithTheList(*shop.window());
    else
        undercowl::bench::endWithFirstFrame(*shop.window());
    return QGuiApplication::exec();
}
