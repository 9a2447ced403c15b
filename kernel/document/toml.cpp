#define TOML_IMPLEMENTATION
#include "kernel/document/toml.h"
