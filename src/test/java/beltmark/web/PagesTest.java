package beltmark.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class PagesTest {

    private static final Path TEMPLATES = Path.of("src/main/jte");

    private static final JavaClasses MAIN = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("beltmark");

    @Test
    void everyPageHasItsTemplateAndEveryTemplateItsPage() throws IOException {
        Set<String> wanted =
                pages().map(JavaClass::reflect).map(Html::template).collect(Collectors.toCollection(TreeSet::new));
        assertEquals(wanted, templates());
    }

    @Test
    void everyPageIsARecord() {
        List<String> others =
                pages().filter(page -> !page.isRecord()).map(JavaClass::getName).toList();
        assertEquals(List.of(), others);
    }

    private static Stream<JavaClass> pages() {
        return MAIN.stream().filter(type -> type.isAssignableTo(Page.class) && !type.isInterface());
    }

    private static Set<String> templates() throws IOException {
        try (Stream<Path> files = Files.walk(TEMPLATES)) {
            return files.filter(Files::isRegularFile)
                    .map(file -> TEMPLATES.relativize(file).toString().replace('\\', '/'))
                    .filter(file ->
                            !file.startsWith("layout/") && !file.startsWith("part/") && !file.contains("/part/"))
                    .collect(Collectors.toCollection(TreeSet::new));
        }
    }
}
