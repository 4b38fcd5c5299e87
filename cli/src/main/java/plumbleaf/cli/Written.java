package plumbleaf.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Files that a verb writes: whole or not at all, and never over another without being told to. */
final class Written {
    private Written() {}

    static void text(Path file, String text, boolean over) {
        bytes(file, text.getBytes(StandardCharsets.UTF_8), over);
    }

    /** Makes a folder where it is missing. */
    static void folder(Path folder) {
        try {
            Files.createDirectories(folder);
        } catch (FileAlreadyExistsException e) {
            throw BadInput.of(folder.toString(), "this is a file, not a folder", "name a folder");
        } catch (IOException e) {
            throw BadInput.of(folder.toString(), "this folder cannot be made", "check that you may write there");
        }
    }

    static void bytes(Path file, byte[] bytes, boolean over) {
        String name = file.toString();
        try {
            if (Files.isDirectory(file)) throw BadInput.of(name, "this is a folder", "name a file in it");
            if (!over && Files.exists(file))
                throw BadInput.of(name, "this file is there already", "name another, or add --over to write over it");
            Path half = file.resolveSibling("." + file.getFileName() + ".part");
            try {
                Files.write(half, bytes);
                Files.move(half, file, StandardCopyOption.REPLACE_EXISTING);
            } finally {
                Files.deleteIfExists(half);
            }
        } catch (NoSuchFileException | FileAlreadyExistsException e) {
            throw BadInput.of(name, "there is no such folder", "make it first");
        } catch (IOException e) {
            throw BadInput.of(
                    name, "this file cannot be written", "check that you may write there and that there is room");
        }
    }
}
