/** Tests speak of every kind, as the terminal and the worker do; only a page begins with a few. */
import '../../src/ui/joints/everyKind.ts';
