package org.lowfirst.app.crash;

import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** The command that runs {@link CrashChild}, made quick to start by a class-data archive of its own. */
final class ChildJava {

    private ChildJava() {}

    static List<String> command(Path directory) throws IOException, InterruptedException {
        String classPath = jarsOnly(directory);
        Path archive = directory.resolve("child.jsa");
        List<String> training = java(classPath, "-XX:ArchiveClassesAtExit=" + archive);
        Path database = directory.resolve("training.db");
        CrashWorld.make(database);
        training.addAll(List.of(database.toString(), "0", "-", "3"));
        Process child = new ProcessBuilder(training)
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        boolean archived = child.waitFor(60, TimeUnit.SECONDS) && child.exitValue() == 0 && Files.exists(archive);
        return java(classPath, archived ? "-XX:SharedArchiveFile=" + archive : "-Xshare:auto");
    }

    private static List<String> java(String classPath, String sharing) {
        return new ArrayList<>(List.of(
                System.getProperty("java.home") + File.separator + "bin" + File.separator + "java",
                "-Xmx96m",
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                sharing,
                "-cp",
                classPath,
                CrashChild.class.getName()));
    }

    /** Class-data sharing wants jars on the class path, so directories of classes are packed. */
    private static String jarsOnly(Path directory) throws IOException {
        String classPath = System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
        List<String> jars = new ArrayList<>();
        for (String element : classPath.split(File.pathSeparator)) {
            Path path = Path.of(element);
            if (Files.isDirectory(path)) {
                jars.add(packed(path, directory.resolve("classes-" + jars.size() + ".jar"))
                        .toString());
            } else {
                jars.add(element);
            }
        }
        return String.join(File.pathSeparator, jars);
    }

    private static Path packed(Path classes, Path jar) throws IOException {
        try (OutputStream out = Files.newOutputStream(jar);
                ZipOutputStream zip = new ZipOutputStream(out);
                Stream<Path> files = Files.walk(classes)) {
            for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
                zip.putNextEntry(
                        new ZipEntry(classes.relativize(file).toString().replace(File.separatorChar, '/')));
                Files.copy(file, zip);
                zip.closeEntry();
            }
        }
        return jar;
    }
}
