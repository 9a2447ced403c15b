#include "modeler/window/frame/application.h"

int main(int argc, char **argv) {
    return roundlay::window::run(argc, argv);
}
