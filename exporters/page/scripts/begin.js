// The yard page. Nothing here asks the network for anything, and no name of it is seen outside.
(() => {
"use strict";
