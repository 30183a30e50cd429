// Not built or tried yet (README.md beside).
package org.undercowl.undercowl;

import android.content.ActivityNotFoundException;
import android.content.Context;
import android.content.Intent;
import android.net.Uri;
import android.webkit.MimeTypeMap;
import androidx.core.content.FileProvider;
import java.io.File;
import java.util.ArrayList;

/** Lends files of the shop to another app, for reading. */
final class Lender {
    private Lender() {}

    /** Shows one file, or brings up the sheet of receivers. Empty when the system took it, else what is wrong. */
    static String lend(Context context, String[] paths, String title, boolean show) {
        ArrayList<Uri> lent = new ArrayList<>();
        try {
            for (String path : paths) {
                lent.add(FileProvider.getUriForFile(context, "org.undercowl.undercowl.files", new File(path)));
            }
        } catch (IllegalArgumentException outside) {
            return outside.getMessage();
        }
        Intent intent;
        if (show) {
            intent = new Intent(Intent.ACTION_VIEW).setDataAndType(lent.get(0), typeOf(paths[0]));
        } else {
            intent = new Intent(Intent.ACTION_SEND_MULTIPLE)
                    .putParcelableArrayListExtra(Intent.EXTRA_STREAM, lent)
                    .setType(paths.length == 1 ? typeOf(paths[0]) : "*/*");
            intent = Intent.createChooser(intent, title);
        }
        intent.addFlags(Intent.FLAG_GRANT_READ_URI_PERMISSION | Intent.FLAG_ACTIVITY_NEW_TASK);
        try {
            context.startActivity(intent);
        } catch (ActivityNotFoundException nobody) {
            return nobody.getMessage();
        }
        return "";
    }

    private static String typeOf(String path) {
        String type = MimeTypeMap.getSingleton().getMimeTypeFromExtension(MimeTypeMap.getFileExtensionFromUrl(path));
        return type != null ? type : "application/octet-stream";
    }
}
