#include "modeler/command_line/program.h"

int main(int argc, char **argv) {
    return roundlay::run_program(argc, argv);
}
