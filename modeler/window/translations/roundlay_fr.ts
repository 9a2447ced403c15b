<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr_FR" sourcelanguage="en">
<context>
    <name>Application</name>
    <message>
        <source>Plans, shows and checks a shell of hewn logs.</source>
        <translation>Dessine, montre et vérifie une coque de pièces équarries.</translation>
    </message>
    <message>
        <source>A document to open</source>
        <translation>Un document à ouvrir</translation>
    </message>
</context>
<context>
    <name>CountBox</name>
    <message>
        <source>%1 is out of bounds; expected a whole number from %2 to %3</source>
        <translation>%1 est hors limites ; attendu : un nombre entier de %2 à %3</translation>
    </message>
</context>
<context>
    <name>CutListPanel</name>
    <message>
        <source>every piece</source>
        <translation>toutes les pièces</translation>
    </message>
    <message>
        <source>distinct pieces</source>
        <translation>pièces distinctes</translation>
    </message>
    <message>
        <source>sticks to order</source>
        <translation>bois à commander</translation>
    </message>
    <message>
        <source>pegs</source>
        <translation>chevilles</translation>
    </message>
    <message>
        <source>totals</source>
        <translation>totaux</translation>
    </message>
    <message>
        <source>Which list</source>
        <translation>Quelle liste</translation>
    </message>
    <message>
        <source>Filter: part of a tag, a kind, a size</source>
        <translation>Filtrer : partie d’un repère, sorte, dimension</translation>
    </message>
    <message>
        <source>Filter the list</source>
        <translation>Filtrer la liste</translation>
    </message>
    <message>
        <source>&amp;Copy</source>
        <translation>&amp;Copier</translation>
    </message>
    <message>
        <source>Copy the list for a spreadsheet</source>
        <translation>Copier la liste pour un tableur</translation>
    </message>
    <message>
        <source>Cut list</source>
        <translation>Liste de débit</translation>
    </message>
    <message>
        <source>%1 pieces, %2 distinct, %3</source>
        <translation>%1 pièces, %2 différentes, %3</translation>
    </message>
    <message>
        <source>, estimated %1</source>
        <translation>, estimées : %1</translation>
    </message>
    <message>
        <source>Totals</source>
        <translation>Totaux</translation>
    </message>
    <message>
        <source>Weight: %1</source>
        <translation>Poids : %1</translation>
    </message>
</context>
<context>
    <name>DecideDialog</name>
    <message>
        <source>Nothing is decided of it yet.</source>
        <translation>Rien n’en est encore décidé.</translation>
    </message>
    <message>
        <source>Decided so far: %1</source>
        <translation>Décidé jusqu’ici : %1</translation>
    </message>
    <message>
        <source>Decide about log %1</source>
        <translation>Décider de la pièce %1</translation>
    </message>
    <message>
        <source>the whole round</source>
        <translation>le rang entier</translation>
    </message>
    <message>
        <source>&amp;What</source>
        <translation>&amp;Quoi</translation>
    </message>
    <message>
        <source>To wa&amp;ll</source>
        <translation>Vers le &amp;mur</translation>
    </message>
    <message>
        <source>&amp;Round</source>
        <translation>&amp;Rang</translation>
    </message>
    <message>
        <source>&amp;Piece, from the left</source>
        <translation>&amp;Pièce, depuis la gauche</translation>
    </message>
    <message>
        <source>Who &amp;decides</source>
        <translation>Qui &amp;décide</translation>
    </message>
    <message>
        <source>Whe&amp;n</source>
        <translation>Qua&amp;nd</translation>
    </message>
    <message>
        <source>Wh&amp;y</source>
        <translation>Pour&amp;quoi</translation>
    </message>
</context>
<context>
    <name>Desk</name>
    <message>
        <source>Untitled shell</source>
        <translation>Coque sans titre</translation>
    </message>
    <message>
        <source>The text has errors; put them right first.</source>
        <translation>Le texte contient des erreurs ; corrigez-les d’abord.</translation>
    </message>
    <message>
        <source>That does not fit there.</source>
        <translation>Cela ne tient pas à cet endroit.</translation>
    </message>
    <message>
        <source>Load from the disk</source>
        <translation>Charger depuis le disque</translation>
    </message>
    <message>
        <source>; expected %1</source>
        <translation> ; attendu : %1</translation>
    </message>
    <message>
        <source>%1 is not opened and stays as it is. Line %2: %3. Text in another encoding can be saved as UTF-8 by the program that wrote it.</source>
        <translation>%1 n’est pas ouvert et reste tel qu’il est. Ligne %2 : %3. Un texte dans un autre codage peut être enregistré en UTF-8 par le programme qui l’a écrit.</translation>
    </message>
    <message>
        <source>That does not fit there. %1</source>
        <translation>Cela ne tient pas à cet endroit. %1</translation>
    </message>
    <message>
        <source>State %1 shows the house as it was measured. Its numbers are changed in the panel Record, its plan in the state %2.</source>
        <translation>L’état %1 montre la maison telle qu’elle a été mesurée. Ses nombres se changent dans le volet Relevé, son plan dans l’état %2.</translation>
    </message>
    <message>
        <source>That log is not in the record any more.</source>
        <translation>Cette pièce n’est plus dans le relevé.</translation>
    </message>
    <message>
        <source>%1-changed-elsewhere</source>
        <translation>%1-modifié-ailleurs</translation>
    </message>
    <message>
        <source>as planned</source>
        <translation>telle que projetée</translation>
    </message>
    <message>
        <source>as found</source>
        <translation>telle que trouvée</translation>
    </message>
    <message>
        <source>as it shall stand</source>
        <translation>telle qu’elle sera</translation>
    </message>
    <message>
        <source>Record an old house</source>
        <translation>Relever une maison ancienne</translation>
    </message>
</context>
<context>
    <name>DrawingView</name>
    <message>
        <source>Exact length</source>
        <translation>Longueur exacte</translation>
    </message>
    <message>
        <source>Type the exact length and press Enter</source>
        <translation>Tapez la longueur exacte puis Entrée</translation>
    </message>
</context>
<context>
    <name>ElevationView</name>
    <message>
        <source>Wall %1 from outside, %2</source>
        <translation>Mur %1 vu de dehors, %2</translation>
    </message>
    <message>
        <source>Wall %1 from the %2, %3</source>
        <translation>Mur %1, côté %2, %3</translation>
    </message>
    <message>
        <source>Elevation</source>
        <translation>Élévation</translation>
    </message>
    <message>
        <source>The chosen wall from outside. Page Up and Page Down choose an opening, arrow keys move it, with Ctrl they size it.</source>
        <translation>Le mur choisi, vu de dehors. Page haut et Page bas choisissent une ouverture, les flèches la déplacent, avec Ctrl elles la dimensionnent.</translation>
    </message>
    <message>
        <source>Drag; type an exact length; Shift or Alt lets go of the round lines</source>
        <translation>Tirez ; tapez une longueur exacte ; Maj ou Alt libère des lignes de rang</translation>
    </message>
    <message>
        <source>Move opening</source>
        <translation>Déplacer l’ouverture</translation>
    </message>
    <message>
        <source>Size opening</source>
        <translation>Dimensionner l’ouverture</translation>
    </message>
    <message>
        <source>Add door</source>
        <translation>Ajouter une porte</translation>
    </message>
    <message>
        <source>Add window</source>
        <translation>Ajouter une fenêtre</translation>
    </message>
    <message>
        <source>Remove opening</source>
        <translation>Ôter l’ouverture</translation>
    </message>
    <message>
        <source>log</source>
        <translation>pièce</translation>
    </message>
    <message>
        <source>island between openings</source>
        <translation>pièce isolée entre deux ouvertures</translation>
    </message>
    <message>
        <source>end of a crossing log, header log</source>
        <translation>bout d’une pièce croisée, linteau</translation>
    </message>
    <message>
        <source>space to settle</source>
        <translation>jeu de tassement</translation>
    </message>
    <message>
        <source>window</source>
        <translation>fenêtre</translation>
    </message>
    <message>
        <source>door</source>
        <translation>porte</translation>
    </message>
    <message>
        <source>%1: %2 from the left of wall %3, its sill %4 up</source>
        <translation>%1 : à %2 de la gauche du mur %3, son seuil à %4</translation>
    </message>
    <message>
        <source>%1. To look at there: %2</source>
        <translation>%1. À regarder là : %2</translation>
    </message>
    <message>
        <source>%1. It did not fit where it was wanted; this is the nearest place that does</source>
        <translation>%1. Elle ne tenait pas à l’endroit voulu ; voici l’endroit le plus proche où elle tient</translation>
    </message>
    <message>
        <source>, %1 wide and %2 high: no larger one of the usual shape fits</source>
        <translation>, large de %1 et haute de %2 : aucune plus grande de forme courante ne tient</translation>
    </message>
</context>
<context>
    <name>ExportDialog</name>
    <message>
        <source>all pieces</source>
        <translation>toutes les pièces</translation>
    </message>
    <message>
        <source>new wood</source>
        <translation>le bois neuf</translation>
    </message>
    <message>
        <source>mended logs with their new wood</source>
        <translation>les pièces réparées et leur bois neuf</translation>
    </message>
    <message>
        <source>logs in which something is to be cut</source>
        <translation>les pièces où il reste à couper</translation>
    </message>
    <message>
        <source>these:</source>
        <translation>celles-ci :</translation>
    </message>
    <message>
        <source>A-05-1, B, what is written on a log</source>
        <translation>A-05-1, B, ce qui est écrit sur une pièce</translation>
    </message>
    <message>
        <source>Tags of pieces, separated by commas</source>
        <translation>Repères de pièces, séparés par des virgules</translation>
    </message>
    <message>
        <source>P&amp;ieces</source>
        <translation>P&amp;ièces</translation>
    </message>
    <message>
        <source>&amp;Export</source>
        <translation>&amp;Exporter</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Fermer</translation>
    </message>
    <message>
        <source>&amp;Open the folder</source>
        <translation>&amp;Ouvrir le dossier</translation>
    </message>
    <message>
        <source>Export</source>
        <translation>Exporter</translation>
    </message>
    <message>
        <source>&amp;Folder</source>
        <translation>&amp;Dossier</translation>
    </message>
    <message>
        <source>&amp;Choose…</source>
        <translation>&amp;Choisir…</translation>
    </message>
    <message>
        <source>Export to</source>
        <translation>Exporter vers</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Arrêter</translation>
    </message>
    <message>
        <source>&amp;Replace those files</source>
        <translation>&amp;Remplacer ces fichiers</translation>
    </message>
    <message>
        <source>%1 files were written.</source>
        <translation>%1 fichiers ont été écrits.</translation>
    </message>
    <message>
        <source>Something went wrong inside the program: %1. It is noted in %2.</source>
        <translation>Quelque chose s’est mal passé dans le programme : %1. C’est noté dans %2.</translation>
    </message>
    <message>
        <source>State of the house that is exported: %1</source>
        <translation>État de la maison qui est exporté : %1</translation>
    </message>
    <message>
        <source>There was no folder %1: it was made.</source>
        <translation>Le dossier %1 n’existait pas : il a été créé.</translation>
    </message>
    <message>
        <source>Nothing was exported: what is to be put right stands below its field.</source>
        <translation>Rien n’a été exporté : ce qui est à corriger est dit sous son champ.</translation>
    </message>
</context>
<context>
    <name>FacesEdit</name>
    <message>
        <source>“%1” is no face</source>
        <translation>« %1 » n’est pas une face</translation>
    </message>
    <message>
        <source>outside, inside, top or under, or as many letters as tell them apart</source>
        <translation>extérieur, intérieur, dessus ou dessous, ou assez de lettres pour les distinguer</translation>
    </message>
</context>
<context>
    <name>FacesView</name>
    <message>
        <source>%1, measured from here</source>
        <translation>%1, mesurée d’ici</translation>
    </message>
    <message>
        <source>Faces of the log</source>
        <translation>Faces de la pièce</translation>
    </message>
    <message>
        <source>The four faces of the log, unrolled, with the zones of its wood. Drag along a face to draw one; by the keyboard they are typed in the panel Record.</source>
        <translation>Les quatre faces de la pièce, déroulées, avec les zones de son bois. Tirez le long d’une face pour en dessiner une ; au clavier elles se saisissent dans le volet Relevé.</translation>
    </message>
    <message>
        <source>Choose a log in any view: its faces are drawn here.</source>
        <translation>Choisissez une pièce dans une vue : ses faces sont dessinées ici.</translation>
    </message>
    <message>
        <source>Nobody knows how long log %1 is: type its length over all in the panel Record.</source>
        <translation>La longueur de la pièce %1 n’est pas connue : saisissez sa longueur hors tout dans le volet Relevé.</translation>
    </message>
    <message>
        <source>Places along log %1 are noted, and not from which corner: say in the panel Record from which.</source>
        <translation>Des places le long de la pièce %1 sont notées, et non depuis quel angle : dites dans le volet Relevé depuis lequel.</translation>
    </message>
    <message>
        <source>Log %1 is measured from %2, which is none of its ends: say in the panel Record from which.</source>
        <translation>La pièce %1 est mesurée depuis %2, qui n’est aucun de ses bouts : dites dans le volet Relevé depuis lequel.</translation>
    </message>
    <message>
        <source>%1, from %2 to %3, measured from %4</source>
        <translation>%1, de %2 à %3, depuis %4</translation>
    </message>
    <message>
        <source>%1. The right button changes it or takes it out.</source>
        <translation>%1. Le bouton droit la change ou l’enlève.</translation>
    </message>
    <message>
        <source>Drag along a face to draw a zone of its wood.</source>
        <translation>Tirez le long d’une face pour dessiner une zone de son bois.</translation>
    </message>
    <message>
        <source>Draw a zone on log %1</source>
        <translation>Dessiner une zone sur la pièce %1</translation>
    </message>
    <message>
        <source>%1 drawn by hand on the face %2, from %3 to %4: proposed, until somebody measures it</source>
        <translation>%1 dessiné à la main sur la face %2, de %3 à %4 : proposé, jusqu’à ce qu’on le mesure</translation>
    </message>
    <message>
        <source>Change a zone of log %1</source>
        <translation>Changer une zone de la pièce %1</translation>
    </message>
    <message>
        <source>&amp;Take the zone out</source>
        <translation>&amp;Enlever la zone</translation>
    </message>
</context>
<context>
    <name>Faults</name>
    <message>
        <source>Line %1</source>
        <translation>Ligne %1</translation>
    </message>
    <message>
        <source>%1 (and %2 more)</source>
        <translation>%1 (et %2 autres)</translation>
    </message>
</context>
<context>
    <name>FindingsPanel</name>
    <message>
        <source>Cannot be built</source>
        <translation>Ne peut pas se bâtir</translation>
    </message>
    <message>
        <source>To decide</source>
        <translation>À décider</translation>
    </message>
    <message>
        <source>Worth knowing</source>
        <translation>Bon à savoir</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Où</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Quoi</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Constats</translation>
    </message>
    <message>
        <source>line %1</source>
        <translation>ligne %1</translation>
    </message>
    <message>
        <source>Nothing is in the way of this shell.</source>
        <translation>Rien ne s&apos;oppose à cette coque.</translation>
    </message>
</context>
<context>
    <name>FloorPanel</name>
    <message>
        <source>stair</source>
        <translation>escalier</translation>
    </message>
    <message>
        <source>&amp;Floor</source>
        <translation>P&amp;lancher</translation>
    </message>
    <message>
        <source>Add a floor</source>
        <translation>Ajouter un plancher</translation>
    </message>
    <message>
        <source>Remove the floor</source>
        <translation>Ôter le plancher</translation>
    </message>
    <message>
        <source>no screen of spans</source>
        <translation>portées non vérifiées</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nom</translation>
    </message>
    <message>
        <source>Na&amp;me</source>
        <translation>No&amp;m</translation>
    </message>
    <message>
        <source>Joists fro&amp;m wall</source>
        <translation>Solives du &amp;mur</translation>
    </message>
    <message>
        <source>to &amp;wall</source>
        <translation>&amp;au mur</translation>
    </message>
    <message>
        <source>Le&amp;vel of their tops</source>
        <translation>Ni&amp;veau du dessus</translation>
    </message>
    <message>
        <source>&amp;Spacing</source>
        <translation>Entra&amp;xe</translation>
    </message>
    <message>
        <source>First s&amp;pace</source>
        <translation>&amp;Premier écart</translation>
    </message>
    <message>
        <source>as the spacing</source>
        <translation>comme l’entraxe</translation>
    </message>
    <message>
        <source>Joist w&amp;idth</source>
        <translation>La&amp;rgeur des solives</translation>
    </message>
    <message>
        <source>Joist &amp;height</source>
        <translation>&amp;Hauteur des solives</translation>
    </message>
    <message>
        <source>Width at the tip</source>
        <translation>Largeur au petit bout</translation>
    </message>
    <message>
        <source>as the butt</source>
        <translation>comme au gros bout</translation>
    </message>
    <message>
        <source>Height at the tip</source>
        <translation>Hauteur au petit bout</translation>
    </message>
    <message>
        <source>&amp;Bearing</source>
        <translation>A&amp;ppui</translation>
    </message>
    <message>
        <source>square</source>
        <translation>droite</translation>
    </message>
    <message>
        <source>tailed</source>
        <translation>à queue</translation>
    </message>
    <message>
        <source>Pocket</source>
        <translation>Mortaise</translation>
    </message>
    <message>
        <source>Poc&amp;ket</source>
        <translation>Mor&amp;taise</translation>
    </message>
    <message>
        <source>Each &amp;cheek widens by</source>
        <translation>Chaque &amp;joue s’évase de</translation>
    </message>
    <message>
        <source>&amp;Live load</source>
        <translation>Char&amp;ge d’usage</translation>
    </message>
    <message>
        <source>&amp;Dead load</source>
        <translation>C&amp;harge permanente</translation>
    </message>
    <message>
        <source>Beams below the joists</source>
        <translation>Poutres sous les solives</translation>
    </message>
    <message>
        <source>B&amp;eam</source>
        <translation>Poutr&amp;e</translation>
    </message>
    <message>
        <source>Add a beam</source>
        <translation>Ajouter une poutre</translation>
    </message>
    <message>
        <source>Remove the beam</source>
        <translation>Ôter la poutre</translation>
    </message>
    <message>
        <source>From wall, to its middle</source>
        <translation>Du mur à son milieu</translation>
    </message>
    <message>
        <source>Beam width</source>
        <translation>Largeur de la poutre</translation>
    </message>
    <message>
        <source>Beam height</source>
        <translation>Hauteur de la poutre</translation>
    </message>
    <message>
        <source>Openings for stairs and hatches</source>
        <translation>Trémies d’escalier et de trappe</translation>
    </message>
    <message>
        <source>&amp;Opening</source>
        <translation>&amp;Trémie</translation>
    </message>
    <message>
        <source>Add an opening</source>
        <translation>Ajouter une trémie</translation>
    </message>
    <message>
        <source>Remove the opening</source>
        <translation>Ôter la trémie</translation>
    </message>
    <message>
        <source>Name of the opening</source>
        <translation>Nom de la trémie</translation>
    </message>
    <message>
        <source>From the left</source>
        <translation>Depuis la gauche</translation>
    </message>
    <message>
        <source>From the wall</source>
        <translation>Depuis le mur</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Largeur</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Longueur</translation>
    </message>
    <message>
        <source>Add floor</source>
        <translation>Ajouter le plancher</translation>
    </message>
    <message>
        <source>Remove floor</source>
        <translation>Ôter le plancher</translation>
    </message>
    <message>
        <source>Add beam</source>
        <translation>Ajouter la poutre</translation>
    </message>
    <message>
        <source>Remove beam</source>
        <translation>Ôter la poutre</translation>
    </message>
    <message>
        <source>Add floor opening</source>
        <translation>Ajouter la trémie</translation>
    </message>
    <message>
        <source>Remove floor opening</source>
        <translation>Ôter la trémie</translation>
    </message>
    <message>
        <source>Change floor %1</source>
        <translation>Changer le plancher %1</translation>
    </message>
    <message>
        <source>%1: %2 to %3</source>
        <translation>%1 : %2 à %3</translation>
    </message>
    <message>
        <source>Beam %1</source>
        <translation>Poutre %1</translation>
    </message>
    <message>
        <source>Opening %1</source>
        <translation>Trémie %1</translation>
    </message>
    <message>
        <source>Floors</source>
        <translation>Planchers</translation>
    </message>
    <message>
        <source>no beam yet: +</source>
        <translation>pas encore de poutre : +</translation>
    </message>
    <message>
        <source>no opening yet: +</source>
        <translation>pas encore de trémie : +</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>non indiqué</translation>
    </message>
    <message>
        <source>new</source>
        <translation>neuf</translation>
    </message>
    <message>
        <source>kept</source>
        <translation>conservé</translation>
    </message>
    <message>
        <source>patched</source>
        <translation>réparé</translation>
    </message>
    <message>
        <source>replacement</source>
        <translation>remplacement</translation>
    </message>
    <message>
        <source>Fabric</source>
        <translation>État</translation>
    </message>
    <message>
        <source>as the shell</source>
        <translation>comme la coque</translation>
    </message>
    <message>
        <source>Wood</source>
        <translation>Bois</translation>
    </message>
</context>
<context>
    <name>FoundWords</name>
    <message>
        <source>timber %1 of a floor</source>
        <translation>bois %1 d’un plancher</translation>
    </message>
    <message>
        <source>proposed</source>
        <translation>proposé</translation>
    </message>
    <message>
        <source>contradicted</source>
        <translation>contredit</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>mesuré</translation>
    </message>
    <message>
        <source>missing</source>
        <comment>a peg</comment>
        <translation>manquante</translation>
    </message>
    <message>
        <source>broken</source>
        <comment>a peg</comment>
        <translation>cassée</translation>
    </message>
    <message>
        <source>sawn</source>
        <comment>a peg</comment>
        <translation>sciée</translation>
    </message>
    <message>
        <source>found</source>
        <comment>a peg</comment>
        <translation>en place</translation>
    </message>
    <message>
        <source>nobody knows where it lay</source>
        <translation>place inconnue</translation>
    </message>
    <message>
        <source>wall %1</source>
        <translation>mur %1</translation>
    </message>
    <message>
        <source>, round %1</source>
        <translation>, rang %1</translation>
    </message>
    <message>
        <source>, piece %1</source>
        <translation>, pièce %1</translation>
    </message>
    <message>
        <source> in %1</source>
        <translation> dans %1</translation>
    </message>
    <message>
        <source>, by %1</source>
        <translation>, par %1</translation>
    </message>
    <message>
        <source>, on %1</source>
        <translation>, le %1</translation>
    </message>
    <message>
        <source>: %1</source>
        <translation> : %1</translation>
    </message>
</context>
<context>
    <name>HouseFields</name>
    <message>
        <source>Length, from corner to corner</source>
        <translation>Longueur, d’angle à angle</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>Level of its mark over the plane</source>
        <translation>Niveau de son repère au-dessus du plan</translation>
    </message>
    <message>
        <source>Read from plane</source>
        <translation>Lu depuis le plan</translation>
    </message>
    <message>
        <source>Lean outward on the first wall&apos;s face</source>
        <translation>Faux aplomb vers l’extérieur, face du premier mur</translation>
    </message>
    <message>
        <source>Lean outward on the second wall&apos;s face</source>
        <translation>Faux aplomb vers l’extérieur, face du second mur</translation>
    </message>
    <message>
        <source>Lean measured over a height of</source>
        <translation>Faux aplomb mesuré sur une hauteur de</translation>
    </message>
    <message>
        <source>Level plane</source>
        <translation>Plan de niveau</translation>
    </message>
    <message>
        <source>Offset of that plane</source>
        <translation>Décalage de ce plan</translation>
    </message>
    <message>
        <source>Length of that diagonal</source>
        <translation>Longueur de cette diagonale</translation>
    </message>
    <message>
        <source>Diagonal between corners</source>
        <translation>Diagonale entre les angles</translation>
    </message>
    <message>
        <source>A diagonal runs between two corners: name both, parted by a comma</source>
        <translation>Une diagonale va d’un angle à un autre : nommez les deux, séparés par une virgule</translation>
    </message>
    <message>
        <source>Record: %1</source>
        <translation>Relevé : %1</translation>
    </message>
    <message>
        <source>Wall %1</source>
        <translation>Mur %1</translation>
    </message>
    <message>
        <source>Corner %1</source>
        <translation>Angle %1</translation>
    </message>
    <message>
        <source>Corner %1, of walls %2 and %3</source>
        <translation>Angle %1, des murs %2 et %3</translation>
    </message>
    <message>
        <source>Level planes</source>
        <translation>Plans de niveau</translation>
    </message>
    <message>
        <source>Diagonals</source>
        <translation>Diagonales</translation>
    </message>
    <message>
        <source>Jambs measured from corner</source>
        <translation>Jambages mesurés depuis l’angle</translation>
    </message>
    <message>
        <source>Near jamb, at the sill</source>
        <translation>Jambage proche, à l’appui</translation>
    </message>
    <message>
        <source>Far jamb, at the sill</source>
        <translation>Jambage loin, à l’appui</translation>
    </message>
    <message>
        <source>Near jamb, at the head</source>
        <translation>Jambage proche, au linteau</translation>
    </message>
    <message>
        <source>Far jamb, at the head</source>
        <translation>Jambage loin, au linteau</translation>
    </message>
    <message>
        <source>Width, jamb to jamb</source>
        <translation>Largeur, entre jambages</translation>
    </message>
    <message>
        <source>Height, sill to head</source>
        <translation>Hauteur, de l’appui au linteau</translation>
    </message>
    <message>
        <source>Level of its sill over the plane</source>
        <translation>Niveau de son appui au-dessus du plan</translation>
    </message>
    <message>
        <source>Level of its head over the plane</source>
        <translation>Niveau de son linteau au-dessus du plan</translation>
    </message>
    <message>
        <source>Levels read from plane</source>
        <translation>Niveaux lus depuis le plan</translation>
    </message>
    <message>
        <source>On field sheet</source>
        <translation>Sur la feuille de relevé</translation>
    </message>
    <message>
        <source>Opening: %1</source>
        <translation>Ouverture : %1</translation>
    </message>
    <message>
        <source> or </source>
        <translation> ou </translation>
    </message>
</context>
<context>
    <name>JointPage</name>
    <message>
        <source>Joint</source>
        <translation>Assemblage</translation>
    </message>
    <message>
        <source>The logs of one corner, lifted apart</source>
        <translation>Les pièces d’un angle, soulevées</translation>
    </message>
    <message>
        <source>Lift the logs apart</source>
        <translation>Soulever les pièces</translation>
    </message>
    <message>
        <source>C&amp;orner</source>
        <translation>&amp;Angle</translation>
    </message>
    <message>
        <source>&amp;Lift</source>
        <translation>&amp;Soulever</translation>
    </message>
    <message>
        <source>&amp;Notch</source>
        <translation>&amp;Entaille</translation>
    </message>
    <message>
        <source>S&amp;lope</source>
        <translation>&amp;Pente</translation>
    </message>
    <message>
        <source>An inside corner: the log ends show indoors.</source>
        <translation>Un angle rentrant : les bouts se voient à l’intérieur.</translation>
    </message>
    <message>
        <source>Change notch of corner %1</source>
        <translation>Changer l’entaille de l’angle %1</translation>
    </message>
    <message>
        <source>this corner</source>
        <translation>cet angle</translation>
    </message>
    <message>
        <source>the whole shell</source>
        <translation>toute la coque</translation>
    </message>
    <message>
        <source>the chosen log</source>
        <translation>la pièce choisie</translation>
    </message>
    <message>
        <source>&amp;Change</source>
        <translation>&amp;Changer</translation>
    </message>
    <message>
        <source>&amp;Along the log</source>
        <translation>&amp;Le long de la pièce</translation>
    </message>
    <message>
        <source>Ac&amp;ross it</source>
        <translation>En t&amp;ravers</translation>
    </message>
    <message>
        <source>Lift the logs apart by itself</source>
        <translation>Soulever les pièces tout seul</translation>
    </message>
    <message>
        <source>Change notch of the shell</source>
        <translation>Changer l’entaille de la coque</translation>
    </message>
    <message>
        <source>Change notch of log %1-%2</source>
        <translation>Changer l’entaille de la pièce %1-%2</translation>
    </message>
    <message>
        <source>Each tail thickens toward its end by %1: locked against pulling out.</source>
        <translation>Chaque queue s’épaissit vers son bout de %1 : elle ne peut sortir.</translation>
    </message>
    <message>
        <source>Nothing but pegs keeps these tails from pulling out.</source>
        <translation>Seules les chevilles empêchent ces queues de sortir.</translation>
    </message>
    <message>
        <source>%1: %2. Shift or Alt lets go of round slopes, Escape gives up.</source>
        <translation>%1 : %2. Maj ou Alt quitte les pentes rondes, Échap abandonne.</translation>
    </message>
    <message>
        <source>Along the log</source>
        <translation>Le long de la pièce</translation>
    </message>
    <message>
        <source>Across it</source>
        <translation>En travers</translation>
    </message>
</context>
<context>
    <name>Labels</name>
    <message>
        <source>Name</source>
        <translation>Nom</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>Épaisseur</translation>
    </message>
    <message>
        <source>Rounds</source>
        <translation>Rangs</translation>
    </message>
    <message>
        <source>Pitch</source>
        <translation>Pas</translation>
    </message>
    <message>
        <source>Gap</source>
        <translation>Jeu</translation>
    </message>
    <message>
        <source>Slope</source>
        <translation>Pente</translation>
    </message>
    <message>
        <source>Along the log</source>
        <translation>Le long de la pièce</translation>
    </message>
    <message>
        <source>Across it</source>
        <translation>En travers</translation>
    </message>
    <message>
        <source>Overhang</source>
        <translation>Débord</translation>
    </message>
    <message>
        <source>Least tail</source>
        <translation>Moindre queue</translation>
    </message>
    <message>
        <source>Wood</source>
        <translation>Bois</translation>
    </message>
    <message>
        <source>From the left</source>
        <translation>Depuis la gauche</translation>
    </message>
    <message>
        <source>From the wall</source>
        <translation>Depuis le mur</translation>
    </message>
    <message>
        <source>Sill</source>
        <translation>Allège</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Largeur</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Hauteur</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Longueur</translation>
    </message>
    <message>
        <source>Mark on the log</source>
        <translation>Marque sur la pièce</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>Butt height</source>
        <translation>Hauteur du gros bout</translation>
    </message>
    <message>
        <source>Tip height</source>
        <translation>Hauteur du petit bout</translation>
    </message>
    <message>
        <source>Butt width</source>
        <translation>Largeur du gros bout</translation>
    </message>
    <message>
        <source>Tip width</source>
        <translation>Largeur du petit bout</translation>
    </message>
    <message>
        <source>Diameter of the stick</source>
        <translation>Diamètre de la bille</translation>
    </message>
    <message>
        <source>Bow</source>
        <translation>Cintrage</translation>
    </message>
    <message>
        <source>Level of their tops</source>
        <translation>Niveau du dessus</translation>
    </message>
    <message>
        <source>Spacing</source>
        <translation>Entraxe</translation>
    </message>
    <message>
        <source>First space</source>
        <translation>Premier écart</translation>
    </message>
    <message>
        <source>Bearing</source>
        <translation>Appui</translation>
    </message>
    <message>
        <source>Pocket</source>
        <translation>Mortaise</translation>
    </message>
    <message>
        <source>Each cheek widens by</source>
        <translation>Chaque joue s’évase de</translation>
    </message>
    <message>
        <source>Live load</source>
        <translation>Charge d’usage</translation>
    </message>
    <message>
        <source>Dead load</source>
        <translation>Charge permanente</translation>
    </message>
    <message>
        <source>“%1”</source>
        <translation>« %1 »</translation>
    </message>
    <message>
        <source>Numbers are in</source>
        <translation>Nombres en</translation>
    </message>
</context>
<context>
    <name>Language</name>
    <message>
        <source>English</source>
        <extracomment>The language of this translation, by its English name; those that the catalogue of words has are known.</extracomment>
        <translation>French</translation>
    </message>
</context>
<context>
    <name>Legend</name>
    <message>
        <source>chosen</source>
        <translation>choisi</translation>
    </message>
    <message>
        <source>cannot be built</source>
        <translation>ne peut être construit</translation>
    </message>
    <message>
        <source>Legend: %1</source>
        <translation>Légende : %1</translation>
    </message>
</context>
<context>
    <name>LiftModel</name>
    <message>
        <source>%1 is ticked as %2</source>
        <translation>%1 est cochée : %2</translation>
    </message>
    <message>
        <source>%1 is not ticked as %2</source>
        <translation>%1 n’est pas cochée : %2</translation>
    </message>
    <message>
        <source>Estimated, of the whole lift. What else hangs on the hook is not in it.</source>
        <translation>Estimé, de toute la levée. Ce qui pend d’autre au crochet n’y est pas.</translation>
    </message>
    <message>
        <source>no.</source>
        <translation>n°</translation>
    </message>
    <message>
        <source>tag</source>
        <translation>repère</translation>
    </message>
    <message>
        <source>may go up</source>
        <translation>peut être levée</translation>
    </message>
    <message>
        <source>may come down</source>
        <translation>peut descendre</translation>
    </message>
    <message>
        <source>weight, estimated</source>
        <translation>poids, estimé</translation>
    </message>
    <message>
        <source>waits for</source>
        <translation>attend</translation>
    </message>
</context>
<context>
    <name>Lifts</name>
    <message>
        <source>cannot come down past %1</source>
        <translation>ne peut plus descendre le long de %1</translation>
    </message>
    <message>
        <source>pegs first of %1</source>
        <translation>d’abord les chevilles de %1</translation>
    </message>
    <message>
        <source>next</source>
        <translation>prochaine</translation>
    </message>
    <message>
        <source>lifted with %1, whose weight has it</source>
        <translation>levée avec %1, dont le poids la compte</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>pas connu</translation>
    </message>
    <message>
        <source>down</source>
        <translation>descendue</translation>
    </message>
    <message>
        <source>cut</source>
        <translation>taillée</translation>
    </message>
    <message>
        <source>checked</source>
        <translation>contrôlée</translation>
    </message>
    <message>
        <source>up</source>
        <translation>levée</translation>
    </message>
    <message>
        <source>pegged</source>
        <translation>chevillée</translation>
    </message>
</context>
<context>
    <name>LoadEdit</name>
    <message>
        <source>this has no unit, and %1 is %2</source>
        <translation>ceci n’a pas d’unité, et %1 font %2</translation>
    </message>
    <message>
        <source>this is no load</source>
        <translation>ceci n’est pas une charge</translation>
    </message>
    <message>
        <source>a load such as 1.9 kPa or 40 psf</source>
        <translation>une charge telle que 1,9 kPa ou 40 psf</translation>
    </message>
</context>
<context>
    <name>LogFields</name>
    <message>
        <source>Stated of the whole log</source>
        <translation>Indiqué pour la pièce entière</translation>
    </message>
    <message>
        <source>Mark on the log</source>
        <translation>Marque sur la pièce</translation>
    </message>
    <message>
        <source>&amp;Mark on the log</source>
        <translation>&amp;Marque sur la pièce</translation>
    </message>
    <message>
        <source>as all logs: %1</source>
        <translation>comme toutes les pièces : %1</translation>
    </message>
    <message>
        <source>as the wall</source>
        <translation>comme le mur</translation>
    </message>
    <message>
        <source>&amp;Butt height</source>
        <translation>Hauteur du &amp;gros bout</translation>
    </message>
    <message>
        <source>&amp;Tip height</source>
        <translation>Hauteur du &amp;petit bout</translation>
    </message>
    <message>
        <source>Butt &amp;width</source>
        <translation>&amp;Largeur du gros bout</translation>
    </message>
    <message>
        <source>Diameter of the &amp;stick</source>
        <translation>Diamètre &amp;de la bille</translation>
    </message>
    <message>
        <source>Tip wi&amp;dth</source>
        <translation>La&amp;rgeur du petit bout</translation>
    </message>
    <message>
        <source>B&amp;ow</source>
        <translation>&amp;Cintrage</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>non mesuré</translation>
    </message>
    <message>
        <source>Butt l&amp;ies</source>
        <translation>Gros &amp;bout</translation>
    </message>
    <message>
        <source>by turns</source>
        <translation>en alternance</translation>
    </message>
    <message>
        <source>left</source>
        <translation>à gauche</translation>
    </message>
    <message>
        <source>right</source>
        <translation>à droite</translation>
    </message>
    <message>
        <source>&amp;Finish</source>
        <translation>&amp;Façon</translation>
    </message>
    <message>
        <source>as the shell</source>
        <translation>comme la coque</translation>
    </message>
    <message>
        <source>hewn</source>
        <translation>équarrie</translation>
    </message>
    <message>
        <source>sawn</source>
        <translation>sciée</translation>
    </message>
    <message>
        <source>peeled</source>
        <translation>écorcée</translation>
    </message>
    <message>
        <source>F&amp;abric</source>
        <translation>&amp;État</translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation>&amp;Note</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>rien</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>non indiqué</translation>
    </message>
    <message>
        <source>new</source>
        <translation>neuve</translation>
    </message>
    <message>
        <source>kept</source>
        <translation>conservée</translation>
    </message>
    <message>
        <source>patched</source>
        <translation>réparée</translation>
    </message>
    <message>
        <source>replacement</source>
        <translation>remplacée</translation>
    </message>
    <message>
        <source>What the fields tell of</source>
        <translation>Ce dont parlent les champs</translation>
    </message>
    <message>
        <source>&amp;These are of</source>
        <translation>&amp;Ceci vaut pour</translation>
    </message>
    <message>
        <source>all logs of this round</source>
        <translation>toutes les pièces de ce rang</translation>
    </message>
    <message>
        <source>log %1 alone</source>
        <translation>la pièce %1 seule</translation>
    </message>
    <message>
        <source>Stated of log %1 alone</source>
        <translation>Indiqué de la pièce %1 seule</translation>
    </message>
    <message>
        <source>Stated of all logs of this round</source>
        <translation>Indiqué de toutes les pièces de ce rang</translation>
    </message>
    <message>
        <source>W&amp;ood</source>
        <translation>B&amp;ois</translation>
    </message>
</context>
<context>
    <name>LogPanel</name>
    <message>
        <source>Inputs</source>
        <translation>Données</translation>
    </message>
    <message>
        <source>Formulas</source>
        <translation>Formules</translation>
    </message>
    <message>
        <source>Bending, shear, bearing</source>
        <translation>Flexion, cisaillement, appui</translation>
    </message>
    <message>
        <source>%1, a %2th part of the span</source>
        <translation>%1, le %2ᵉ de la portée</translation>
    </message>
    <message>
        <source>Bends under the live load</source>
        <translation>Fléchit sous la charge d’usage</translation>
    </message>
    <message>
        <source>Allowable stresses</source>
        <translation>Contraintes admissibles</translation>
    </message>
    <message>
        <source>Screened span</source>
        <translation>Portée vérifiée</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Prudence</translation>
    </message>
    <message>
        <source>Weights</source>
        <translation>Poids</translation>
    </message>
    <message>
        <source>Its round log</source>
        <translation>Son rondin</translation>
    </message>
    <message>
        <source>Its blank</source>
        <translation>Son ébauche</translation>
    </message>
    <message>
        <source>Wall</source>
        <translation>Mur</translation>
    </message>
    <message>
        <source>&amp;Length outside</source>
        <translation>&amp;Longueur au dehors</translation>
    </message>
    <message>
        <source>Numbers of what is chosen</source>
        <translation>Chiffres de ce qui est choisi</translation>
    </message>
    <message>
        <source>left</source>
        <translation>à gauche</translation>
    </message>
    <message>
        <source>right</source>
        <translation>à droite</translation>
    </message>
    <message>
        <source>Opening</source>
        <translation>Ouverture</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nom</translation>
    </message>
    <message>
        <source>door</source>
        <translation>porte</translation>
    </message>
    <message>
        <source>window</source>
        <translation>fenêtre</translation>
    </message>
    <message>
        <source>&amp;Kind</source>
        <translation>&amp;Sorte</translation>
    </message>
    <message>
        <source>From the &amp;left</source>
        <translation>Depuis la &amp;gauche</translation>
    </message>
    <message>
        <source>&amp;Sill</source>
        <translation>&amp;Allège</translation>
    </message>
    <message>
        <source>&amp;Width</source>
        <translation>&amp;Largeur</translation>
    </message>
    <message>
        <source>&amp;Height</source>
        <translation>&amp;Hauteur</translation>
    </message>
    <message>
        <source>Nothing chosen</source>
        <translation>Rien de choisi</translation>
    </message>
    <message>
        <source>Corner %1</source>
        <translation>Angle %1</translation>
    </message>
    <message>
        <source>Choose a log, an opening, a wall or a corner in any view.</source>
        <translation>Choisissez une pièce, une ouverture, un mur ou un angle dans une vue.</translation>
    </message>
    <message>
        <source>Opening in wall %1</source>
        <translation>Ouverture du mur %1</translation>
    </message>
    <message>
        <source>Wall %1</source>
        <translation>Mur %1</translation>
    </message>
    <message>
        <source>Change opening</source>
        <translation>Changer l’ouverture</translation>
    </message>
    <message>
        <source>Name opening</source>
        <translation>Nommer l’ouverture</translation>
    </message>
    <message>
        <source>Size wall</source>
        <translation>Dimensionner le mur</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Sorte</translation>
    </message>
    <message>
        <source>Blank</source>
        <translation>Brut</translation>
    </message>
    <message>
        <source>%1 × %2, %3 long</source>
        <translation>%1 × %2, longueur %3</translation>
    </message>
    <message>
        <source>Volume</source>
        <translation>Volume</translation>
    </message>
    <message>
        <source>Weight, estimated</source>
        <translation>Masse, estimée</translation>
    </message>
    <message>
        <source>Butt</source>
        <translation>Gros bout</translation>
    </message>
    <message>
        <source>Left end</source>
        <translation>Bout gauche</translation>
    </message>
    <message>
        <source>Right end</source>
        <translation>Bout droit</translation>
    </message>
    <message>
        <source>Above</source>
        <translation>Au-dessus</translation>
    </message>
    <message>
        <source>Below</source>
        <translation>Au-dessous</translation>
    </message>
    <message>
        <source>Notched left to</source>
        <translation>Entaillée à gauche avec</translation>
    </message>
    <message>
        <source>Notched right to</source>
        <translation>Entaillée à droite avec</translation>
    </message>
    <message>
        <source>Raised as number</source>
        <translation>Numéro au levage</translation>
    </message>
    <message>
        <source>Cuts</source>
        <translation>Tailles</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Constats</translation>
    </message>
    <message>
        <source>Equal to</source>
        <translation>Égale à</translation>
    </message>
    <message>
        <source>State log %1</source>
        <translation>Indiquer la pièce %1</translation>
    </message>
    <message>
        <source>Finish</source>
        <translation>Façon</translation>
    </message>
    <message>
        <source>Fabric</source>
        <translation>État</translation>
    </message>
    <message>
        <source>What is chosen</source>
        <translation>Ce qui est choisi</translation>
    </message>
    <message>
        <source>Its notch is seen, and changed, in the panel Joint.</source>
        <translation>Son entaille se voit et se change dans le panneau Assemblage.</translation>
    </message>
    <message>
        <source>Header log</source>
        <translation>Pièce de linteau</translation>
    </message>
    <message>
        <source>%1, runs %2 and %3 past the jambs</source>
        <translation>%1, dépasse les jambages de %2 et %3</translation>
    </message>
    <message>
        <source>Log below</source>
        <translation>Pièce dessous</translation>
    </message>
    <message>
        <source>Settle space</source>
        <translation>Espace de tassement</translation>
    </message>
    <message>
        <source>by</source>
        <translation>selon</translation>
    </message>
    <message>
        <source>Wood</source>
        <translation>Bois</translation>
    </message>
</context>
<context>
    <name>MainWindow</name>
    <message>
        <source>A file&apos;s name cannot have &quot; in it here: leave it out.</source>
        <translation>Un nom de fichier ne peut pas contenir « &quot; » ici : retirez-le.</translation>
    </message>
    <message>
        <source>Looking for the nearest place that fits</source>
        <translation>Recherche de la place la plus proche qui convient</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>Shell</source>
        <translation>Coque</translation>
    </message>
    <message>
        <source>Elevation</source>
        <translation>Élévation</translation>
    </message>
    <message>
        <source>Cut list</source>
        <translation>Liste de débit</translation>
    </message>
    <message>
        <source>Cut sheet</source>
        <translation>Fiche de taille</translation>
    </message>
    <message>
        <source>Text</source>
        <translation>Texte</translation>
    </message>
    <message>
        <source>Chosen</source>
        <translation>Choix</translation>
    </message>
    <message>
        <source>Joint</source>
        <translation>Assemblage</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Constats</translation>
    </message>
    <message>
        <source>%1[*] — roundlay</source>
        <translation>%1[*] — roundlay</translation>
    </message>
    <message>
        <source>Cannot be built: see the findings</source>
        <translation>Ne peut pas se bâtir : voyez les constats</translation>
    </message>
    <message>
        <source>%1 pieces, %2 rounds</source>
        <translation>%1 pièces, %2 rangs</translation>
    </message>
    <message>
        <source>%1 pieces, %2 rounds, worked out in %3 ms</source>
        <translation>%1 pièces, %2 rangs, calculés en %3 ms</translation>
    </message>
    <message>
        <source>Show feet and inches</source>
        <translation>Montrer pieds et pouces</translation>
    </message>
    <message>
        <source>Show millimetres</source>
        <translation>Montrer des millimètres</translation>
    </message>
    <message>
        <source>Keyboard</source>
        <translation>Clavier</translation>
    </message>
    <message>
        <source>Keyboard shortcuts</source>
        <translation>Raccourcis clavier</translation>
    </message>
    <message>
        <source>none</source>
        <translation>aucun</translation>
    </message>
    <message>
        <source>About roundlay</source>
        <translation>À propos de roundlay</translation>
    </message>
    <message>
        <source>&lt;h3&gt;roundlay %1&lt;/h3&gt;&lt;p&gt;Hewn-log shells as one solid model: plans, cut sheets, cut lists.&lt;/p&gt;&lt;p&gt;Free software under the GNU General Public License, version 3 or later, without any warranty. Weights and spans are estimates; local code and a licensed professional decide.&lt;/p&gt;&lt;p&gt;Drawn by: %2&lt;/p&gt;</source>
        <translation>&lt;h3&gt;roundlay %1&lt;/h3&gt;&lt;p&gt;Des coques de pièces équarries en un seul modèle solide : plans, fiches de taille, listes de débit.&lt;/p&gt;&lt;p&gt;Logiciel libre sous la licence publique générale GNU, version 3 ou ultérieure, sans aucune garantie. Masses et portées sont des estimations ; le code local et un professionnel agréé décident.&lt;/p&gt;&lt;p&gt;Dessiné par : %2&lt;/p&gt;</translation>
    </message>
    <message>
        <source>roundlay documents (*%1)</source>
        <translation>Documents roundlay (*%1)</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Fermer</translation>
    </message>
    <message>
        <source>Save elsewhere…</source>
        <translation>Enregistrer ailleurs…</translation>
    </message>
    <message>
        <source>Save the document</source>
        <translation>Enregistrer le document</translation>
    </message>
    <message>
        <source>Unsaved work</source>
        <translation>Travail non enregistré</translation>
    </message>
    <message>
        <source>%1 has changes that are not saved.</source>
        <translation>%1 contient des changements non enregistrés.</translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translation>&amp;Enregistrer</translation>
    </message>
    <message>
        <source>&amp;Throw away</source>
        <translation>&amp;Jeter</translation>
    </message>
    <message>
        <source>&amp;Go on working</source>
        <translation>&amp;Continuer à travailler</translation>
    </message>
    <message>
        <source>Open a document</source>
        <translation>Ouvrir un document</translation>
    </message>
    <message>
        <source>%1-export</source>
        <translation>%1-export</translation>
    </message>
    <message>
        <source>Unsaved work cannot be kept aside: the disk does not take it. Save soon, elsewhere.</source>
        <translation>Le travail non enregistré ne peut pas être mis de côté : le disque le refuse. Enregistrez bientôt, ailleurs.</translation>
    </message>
    <message>
        <source>%1 was changed on the disk by something else.</source>
        <translation>%1 a été changé sur le disque par autre chose.</translation>
    </message>
    <message>
        <source>Load it</source>
        <translation>Le charger</translation>
    </message>
    <message>
        <source>Keep mine</source>
        <translation>Garder le mien</translation>
    </message>
    <message>
        <source>roundlay ended badly while %1 had unsaved changes.</source>
        <translation>roundlay s’est mal terminé alors que %1 contenait des changements non enregistrés.</translation>
    </message>
    <message>
        <source>Recover</source>
        <translation>Récupérer</translation>
    </message>
    <message>
        <source>Throw away</source>
        <translation>Jeter</translation>
    </message>
    <message>
        <source>Later</source>
        <translation>Plus tard</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Fichier</translation>
    </message>
    <message>
        <source>&amp;New shell…</source>
        <translation>&amp;Nouvelle coque…</translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation>&amp;Ouvrir…</translation>
    </message>
    <message>
        <source>Open &amp;recent</source>
        <translation>Ouvrir un document &amp;récent</translation>
    </message>
    <message>
        <source>Save &amp;as…</source>
        <translation>Enregistrer &amp;sous…</translation>
    </message>
    <message>
        <source>Ctrl+Shift+S</source>
        <translation>Ctrl+Shift+S</translation>
    </message>
    <message>
        <source>&amp;Export…</source>
        <translation>E&amp;xporter…</translation>
    </message>
    <message>
        <source>Ctrl+E</source>
        <translation>Ctrl+E</translation>
    </message>
    <message>
        <source>&amp;Print cut sheets…</source>
        <translation>&amp;Imprimer les fiches de taille…</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Fermer</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Quitter</translation>
    </message>
    <message>
        <source>Ctrl+Q</source>
        <translation>Ctrl+Q</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Édition</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Annuler</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Rétablir</translation>
    </message>
    <message>
        <source>&amp;Copy the cut list</source>
        <translation>&amp;Copier la liste de débit</translation>
    </message>
    <message>
        <source>Ctrl+Shift+C</source>
        <translation>Ctrl+Shift+C</translation>
    </message>
    <message>
        <source>&amp;Next log</source>
        <translation>Pièce &amp;suivante</translation>
    </message>
    <message>
        <source>Ctrl+.</source>
        <translation>Ctrl+.</translation>
    </message>
    <message>
        <source>&amp;Previous log</source>
        <translation>Pièce &amp;précédente</translation>
    </message>
    <message>
        <source>Ctrl+,</source>
        <translation>Ctrl+,</translation>
    </message>
    <message>
        <source>Choose n&amp;othing</source>
        <translation>Ne &amp;rien choisir</translation>
    </message>
    <message>
        <source>Ctrl+Shift+A</source>
        <translation>Ctrl+Shift+A</translation>
    </message>
    <message>
        <source>&amp;Shell</source>
        <translation>&amp;Coque</translation>
    </message>
    <message>
        <source>Add a &amp;window to the wall</source>
        <translation>Ajouter une &amp;fenêtre au mur</translation>
    </message>
    <message>
        <source>Ctrl+W, W</source>
        <translation>Ctrl+W, W</translation>
    </message>
    <message>
        <source>Add a &amp;door to the wall</source>
        <translation>Ajouter une &amp;porte au mur</translation>
    </message>
    <message>
        <source>Ctrl+D</source>
        <translation>Ctrl+D</translation>
    </message>
    <message>
        <source>Ctrl+I</source>
        <translation>Ctrl+I</translation>
    </message>
    <message>
        <source>Move the wall &amp;outward</source>
        <translation>Déplacer le mur vers l’&amp;extérieur</translation>
    </message>
    <message>
        <source>Ctrl+Shift+Up</source>
        <translation>Ctrl+Shift+Up</translation>
    </message>
    <message>
        <source>Move the wall &amp;inward</source>
        <translation>Déplacer le mur vers l’&amp;intérieur</translation>
    </message>
    <message>
        <source>Ctrl+Shift+Down</source>
        <translation>Ctrl+Shift+Down</translation>
    </message>
    <message>
        <source>Switch &amp;units</source>
        <translation>Changer d’&amp;unités</translation>
    </message>
    <message>
        <source>Ctrl+U</source>
        <translation>Ctrl+U</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Vue</translation>
    </message>
    <message>
        <source>&amp;Look from</source>
        <translation>&amp;Regarder depuis</translation>
    </message>
    <message>
        <source>South-&amp;east</source>
        <translation>Le sud-&amp;est</translation>
    </message>
    <message>
        <source>South-&amp;west</source>
        <translation>Le sud-&amp;ouest</translation>
    </message>
    <message>
        <source>North-e&amp;ast</source>
        <translation>Le nord-e&amp;st</translation>
    </message>
    <message>
        <source>North-wes&amp;t</source>
        <translation>Le nord-o&amp;uest</translation>
    </message>
    <message>
        <source>&amp;South</source>
        <translation>Le &amp;sud</translation>
    </message>
    <message>
        <source>&amp;North</source>
        <translation>Le &amp;nord</translation>
    </message>
    <message>
        <source>Eas&amp;t</source>
        <translation>L’es&amp;t</translation>
    </message>
    <message>
        <source>Wes&amp;t</source>
        <translation>L’&amp;ouest</translation>
    </message>
    <message>
        <source>&amp;Above</source>
        <translation>Le &amp;dessus</translation>
    </message>
    <message>
        <source>&amp;Fit everything</source>
        <translation>&amp;Tout montrer</translation>
    </message>
    <message>
        <source>Ctrl+0</source>
        <translation>Ctrl+0</translation>
    </message>
    <message>
        <source>Ctrl+R</source>
        <translation>Ctrl+R</translation>
    </message>
    <message>
        <source>&amp;Colour the model</source>
        <translation>&amp;Colorer le modèle</translation>
    </message>
    <message>
        <source>by &amp;wall</source>
        <translation>par &amp;mur</translation>
    </message>
    <message>
        <source>by &amp;finding</source>
        <translation>par &amp;constat</translation>
    </message>
    <message>
        <source>by &amp;equal pieces</source>
        <translation>par pièces &amp;égales</translation>
    </message>
    <message>
        <source>&amp;Panels</source>
        <translation>&amp;Panneaux</translation>
    </message>
    <message>
        <source>&amp;Appearance</source>
        <translation>&amp;Apparence</translation>
    </message>
    <message>
        <source>As the &amp;system</source>
        <translation>Comme le &amp;système</translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation>&amp;Claire</translation>
    </message>
    <message>
        <source>&amp;Dark</source>
        <translation>&amp;Sombre</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Aide</translation>
    </message>
    <message>
        <source>&amp;Keyboard</source>
        <translation>&amp;Clavier</translation>
    </message>
    <message>
        <source>F1</source>
        <translation>F1</translation>
    </message>
    <message>
        <source>&amp;About roundlay</source>
        <translation>À &amp;propos de roundlay</translation>
    </message>
    <message>
        <source>by &amp;kept and new</source>
        <translation>par &amp;neuf et ancien</translation>
    </message>
    <message>
        <source>Re&amp;move opening or partition</source>
        <translation>Ô&amp;ter l’ouverture ou la cloison</translation>
    </message>
    <message>
        <source>Add a &amp;partition to the wall</source>
        <translation>Ajouter une &amp;cloison au mur</translation>
    </message>
    <message>
        <source>Ctrl+Shift+I</source>
        <translation>Ctrl+Shift+I</translation>
    </message>
    <message>
        <source>&amp;Draw a new shell…</source>
        <translation>&amp;Dessiner une nouvelle coque…</translation>
    </message>
    <message>
        <source>Ctrl+Shift+N</source>
        <translation>Ctrl+Shift+N</translation>
    </message>
    <message>
        <source>Open a de&amp;mo</source>
        <translation>Ouvrir un e&amp;xemple</translation>
    </message>
    <message>
        <source>D&amp;raw a partition</source>
        <translation>Dessine&amp;r une cloison</translation>
    </message>
    <message>
        <source>Ctrl+Shift+D</source>
        <translation>Ctrl+Shift+D</translation>
    </message>
    <message>
        <source>Floors</source>
        <translation>Planchers</translation>
    </message>
    <message>
        <source>Add a &amp;floor</source>
        <translation>Ajouter un p&amp;lancher</translation>
    </message>
    <message>
        <source>Ctrl+Shift+F</source>
        <translation>Ctrl+Shift+F</translation>
    </message>
    <message>
        <source>Not worked out: something went wrong inside</source>
        <translation>Pas calculé : quelque chose n’a pas marché dans le programme</translation>
    </message>
    <message>
        <source>Drop one roundlay document at a time.</source>
        <translation>Déposez un document roundlay à la fois.</translation>
    </message>
    <message>
        <source>Only a file of this computer can be dropped here: save it first.</source>
        <translation>Seul un fichier de cet ordinateur peut être déposé ici : enregistrez-le d’abord.</translation>
    </message>
    <message>
        <source>%1 is a folder: drop the document that lies in it.</source>
        <translation>%1 est un dossier : déposez le document qu’il contient.</translation>
    </message>
    <message>
        <source>%1 is no roundlay document: the name of one ends in %2.</source>
        <translation>%1 n’est pas un document roundlay : leur nom se termine par %2.</translation>
    </message>
    <message>
        <source>%1 is not saved yet.</source>
        <translation>%1 n’est pas encore enregistré.</translation>
    </message>
    <message>
        <source>Save before it closes?</source>
        <translation>Enregistrer avant de fermer ?</translation>
    </message>
    <message>
        <source>Save mine elsewhere…</source>
        <translation>Enregistrer le mien ailleurs…</translation>
    </message>
    <message>
        <source>The file of %1 is gone from the disk; what is here is all there is of it.</source>
        <translation>Le fichier de %1 n’est plus sur le disque ; il n’en reste que ce qui est ici.</translation>
    </message>
    <message>
        <source>Save it again</source>
        <translation>L’enregistrer de nouveau</translation>
    </message>
    <message>
        <source>%1 was changed on the disk by something else, and has changes here that are not saved. Loading it takes their place; Undo brings them back.</source>
        <translation>%1 a été modifié sur le disque par autre chose, et a ici des modifications non enregistrées. Le charger prend leur place ; Annuler les ramène.</translation>
    </message>
    <message>
        <source>What is on the disk is loaded in place of your own changes.</source>
        <translation>Ce qui est sur le disque a été chargé à la place de vos modifications.</translation>
    </message>
    <message>
        <source>Bring mine back</source>
        <translation>Ramener les miennes</translation>
    </message>
    <message>
        <source>Undo: %1</source>
        <translation>Annuler : %1</translation>
    </message>
    <message>
        <source>Redo: %1</source>
        <translation>Rétablir : %1</translation>
    </message>
    <message>
        <source>&amp;Next panel</source>
        <translation>Panneau &amp;suivant</translation>
    </message>
    <message>
        <source>F6</source>
        <translation>F6</translation>
    </message>
    <message>
        <source>P&amp;revious panel</source>
        <translation>Panneau &amp;précédent</translation>
    </message>
    <message>
        <source>Shift+F6</source>
        <translation>Shift+F6</translation>
    </message>
    <message>
        <source>Put panels &amp;back</source>
        <translation>&amp;Remettre les panneaux en place</translation>
    </message>
    <message>
        <source>&lt;h3&gt;In fields&lt;/h3&gt;&lt;p&gt;Enter or Tab takes what is typed, Escape brings the old value back. A bare number is in millimetres, or in inches where the shell is. Undo takes back letters first, then goes on in the document.&lt;/p&gt;</source>
        <translation>&lt;h3&gt;Dans les champs&lt;/h3&gt;&lt;p&gt;Entrée ou Tab prend ce qui est tapé, Échap ramène l’ancienne valeur. Un nombre seul est en millimètres, ou en pouces si la coque l’est. Annuler reprend d’abord les lettres, puis continue dans le document.&lt;/p&gt;</translation>
    </message>
    <message>
        <source>&lt;h3&gt;In the views&lt;/h3&gt;&lt;p&gt;Plan: Page Up and Page Down choose a wall, arrow keys move it.&lt;br&gt;Elevation: Page Up and Page Down choose an opening, arrow keys move it, with Ctrl they size it, with Shift by more.&lt;br&gt;Model and joint: arrow keys turn, with Shift they move.&lt;br&gt;Sketch of a new shell: Enter closes the figure, Backspace takes the last corner back. Walls run east, north, west or south; with Shift or Alt, or while Slanted walls is ticked, in any direction. Typed, a direction stands behind the length: 4500 mm at 135, in degrees of the compass (0 north, 90 east, 180 south, 270 west), or 4500 mm at south-east.&lt;br&gt;Cut sheet: Page Up and Page Down turn pages.&lt;br&gt;Everywhere: plus and minus zoom, Home fits; the right button, or the Menu key or Shift+F10 for what is chosen, shows what can be done with it. While dragging or drawing, digits type an exact length, Escape gives up, Shift or Alt lets go of the lines.&lt;/p&gt;</source>
        <translation>&lt;h3&gt;Dans les vues&lt;/h3&gt;&lt;p&gt;Plan : Page haut et Page bas choisissent un mur, les flèches le déplacent.&lt;br&gt;Élévation : Page haut et Page bas choisissent une ouverture, les flèches la déplacent, avec Ctrl elles la dimensionnent, avec Maj de davantage.&lt;br&gt;Modèle et assemblage : les flèches tournent, avec Maj elles déplacent.&lt;br&gt;Esquisse d’une nouvelle coque : Entrée ferme la figure, Retour arrière reprend le dernier angle. Les murs courent vers l’est, le nord, l’ouest ou le sud ; avec Maj ou Alt, ou tant que Murs de biais est coché, dans n’importe quelle direction. Tapée, une direction suit la longueur : 4500 mm à 135, en degrés de la boussole (0 nord, 90 est, 180 sud, 270 ouest), ou 4500 mm à sud-est.&lt;br&gt;Fiche de taille : Page haut et Page bas tournent les pages.&lt;br&gt;Partout : plus et moins changent l’échelle, Origine montre tout ; le bouton droit, ou la touche Menu ou Maj+F10 pour ce qui est choisi, montre ce qu’on peut en faire. Pendant qu’on tire ou dessine, des chiffres donnent une longueur exacte, Échap renonce, Maj ou Alt libère des lignes.&lt;/p&gt;</translation>
    </message>
    <message>
        <source>Save th&amp;is picture…</source>
        <translation>Enregistrer cette &amp;image…</translation>
    </message>
    <message>
        <source>Ctrl+Shift+P</source>
        <translation>Ctrl+Shift+P</translation>
    </message>
    <message>
        <source>Print the chosen log&apos;s cut s&amp;heet…</source>
        <translation>Imprimer la &amp;fiche de la pièce choisie…</translation>
    </message>
    <message>
        <source>Ctrl+Alt+P</source>
        <translation>Ctrl+Alt+P</translation>
    </message>
    <message>
        <source>Le&amp;gend</source>
        <translation>Lé&amp;gende</translation>
    </message>
    <message>
        <source>Ctrl+L</source>
        <translation>Ctrl+L</translation>
    </message>
    <message>
        <source>%1, cut sheets</source>
        <translation>%1, fiches de taille</translation>
    </message>
    <message>
        <source>The language is chosen. It is spoken from the next start of roundlay on.</source>
        <translation>La langue est choisie. Elle sera parlée à partir du prochain démarrage de roundlay.</translation>
    </message>
    <message>
        <source>Something went wrong inside roundlay: %1. The document is as it was, and what is not saved is kept aside; to be sure, save it. It is noted in %2.</source>
        <translation>Quelque chose s’est mal passé dans roundlay : %1. Le document est tel qu’il était, et ce qui n’est pas enregistré est mis de côté ; pour plus de sûreté, enregistrez-le. C’est noté dans %2.</translation>
    </message>
    <message>
        <source>&lt;h3&gt;In the window&lt;/h3&gt;&lt;p&gt;F10, or Alt with its letter, opens a menu; F6 goes on to the next panel. A panel that is chosen under View › Panels comes to the front; one that is seen closes.&lt;/p&gt;</source>
        <translation>&lt;h3&gt;Dans la fenêtre&lt;/h3&gt;&lt;p&gt;F10, ou Alt avec sa lettre, ouvre un menu ; F6 passe au panneau suivant. Un panneau choisi sous Vue › Panneaux vient devant ; celui qu’on voit se ferme.&lt;/p&gt;</translation>
    </message>
    <message>
        <source>Add a s&amp;tep of the foundation to the wall</source>
        <translation>Ajouter un re&amp;ssaut de la fondation au mur</translation>
    </message>
    <message>
        <source>Changed on the disk</source>
        <translation>Modifié sur le disque</translation>
    </message>
    <message>
        <source>To save here would take the place of that change. Overwriting keeps it beside the file, as %1; loading it keeps yours in Undo.</source>
        <translation>Enregistrer ici prendrait la place de cette modification. Écraser la garde à côté du fichier, sous le nom %1 ; la charger garde la vôtre dans Annuler.</translation>
    </message>
    <message>
        <source>Save mine &amp;elsewhere…</source>
        <translation>&amp;Enregistrer le mien ailleurs…</translation>
    </message>
    <message>
        <source>&amp;Overwrite</source>
        <translation>É&amp;craser</translation>
    </message>
    <message>
        <source>&amp;Load theirs</source>
        <translation>&amp;Charger l’autre</translation>
    </message>
    <message>
        <source>What stands on the disk cannot be kept as %1, so nothing was overwritten.</source>
        <translation>Ce qui est sur le disque ne peut être gardé sous %1 : rien n’a été écrasé.</translation>
    </message>
    <message>
        <source>What stood on the disk is kept as %1.</source>
        <translation>Ce qui était sur le disque est gardé sous %1.</translation>
    </message>
    <message>
        <source>Ctrl+Shift+R</source>
        <translation>Ctrl+Shift+R</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>Relevé</translation>
    </message>
    <message>
        <source>by &amp;condition</source>
        <translation>par é&amp;tat du bois</translation>
    </message>
    <message>
        <source>by &amp;decision</source>
        <translation>par &amp;décision</translation>
    </message>
    <message>
        <source>by &amp;measured or proposed</source>
        <translation>par mesuré ou pro&amp;posé</translation>
    </message>
    <message>
        <source>Faces</source>
        <translation>Faces</translation>
    </message>
    <message>
        <source>&amp;Record the log</source>
        <translation>Relever la p&amp;ièce</translation>
    </message>
    <message>
        <source>The states of the house stand over the views. What is typed in the panel Record is in all of them.</source>
        <translation>Les états de la maison sont au-dessus des vues. Ce qui est saisi dans le volet Relevé vaut pour tous.</translation>
    </message>
    <message>
        <source>&lt;h3&gt;In the record&lt;/h3&gt;&lt;p&gt;Enter takes what is typed and goes to the next box, at the end of a log to the next log; with Shift it goes back. With Ctrl it goes to the same box of the next log. The title of a group folds it away, and Enter and Tab pass it by; Ctrl+Up goes to it, Space folds it. The Menu key on a number says whether it is measured, proposed or contradicted. Faces may be typed by their first letters.&lt;/p&gt;</source>
        <translation>&lt;h3&gt;Dans le relevé&lt;/h3&gt;&lt;p&gt;Entrée prend ce qui est saisi et va à la case suivante, à la fin d’une pièce à la pièce suivante ; avec Maj elle revient. Avec Ctrl elle va à la même case de la pièce suivante. Le titre d’un groupe le replie, et Entrée et Tab le sautent ; Ctrl+Haut y va, Espace le replie. La touche Menu sur un nombre dit s’il est mesuré, proposé ou contredit. Les faces se saisissent par leurs premières lettres.&lt;/p&gt;</translation>
    </message>
    <message>
        <source>Record an old &amp;house</source>
        <translation>Relever une maison an&amp;cienne</translation>
    </message>
    <message>
        <source>Pla&amp;y the raise</source>
        <translation>&amp;Jouer le levage</translation>
    </message>
    <message>
        <source>Lang&amp;uage</source>
        <translation>Lang&amp;ue</translation>
    </message>
    <message>
        <source>Saved without what could not be taken: %1. It still stands there to be put right.</source>
        <translation>Enregistré sans ce qui n’a pas pu être pris : %1. Cela y est toujours, à corriger.</translation>
    </message>
    <message>
        <source>Show it</source>
        <translation>Le montrer</translation>
    </message>
    <message>
        <source>%1: “%2” could not be taken and is gone, for something else is chosen now.</source>
        <translation>%1 : « %2 » n’a pas pu être pris et est perdu, car autre chose est choisi maintenant.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>by what is &amp;up</source>
        <translation>par &amp;levage</translation>
    </message>
    <message>
        <source>Ctrl+T</source>
        <translation>Ctrl+T</translation>
    </message>
    <message>
        <source>Raising</source>
        <translation>Levage</translation>
    </message>
    <message>
        <source>The photographs of this demo lie inside the program, and the document looks for them beside itself.</source>
        <translation>Les photographies de cette démo sont dans le programme, et le document les cherche à côté de lui.</translation>
    </message>
    <message>
        <source>Put them beside it</source>
        <translation>Les mettre à côté</translation>
    </message>
    <message>
        <source>The photographs could not be put into %1.</source>
        <translation>Les photographies n’ont pas pu être mises dans %1.</translation>
    </message>
    <message>
        <source>Leave them</source>
        <translation>Les laisser</translation>
    </message>
    <message>
        <source>&lt;h3&gt;In the raise&lt;/h3&gt;&lt;p&gt;Up and down go from lift to lift, with Shift over several. Space ticks them as up, or as down while they are taken down; left and right go to the boxes for cut, checked and pegged, where Space ticks that. Where there is a tick, Space takes it back.&lt;/p&gt;</source>
        <translation>&lt;h3&gt;Dans le levage&lt;/h3&gt;&lt;p&gt;Haut et bas vont de levée en levée, avec Maj sur plusieurs. Espace les coche comme levées, ou comme descendues pendant le démontage ; gauche et droite vont aux cases taillée, contrôlée et chevillée, où Espace coche cela. Là où c’est coché, Espace décoche.&lt;/p&gt;</translation>
    </message>
</context>
<context>
    <name>MeasureEdit</name>
    <message>
        <source>%1; expected %2</source>
        <translation>%1 ; attendu : %2</translation>
    </message>
</context>
<context>
    <name>Mishap</name>
    <message>
        <source>it is not known what</source>
        <translation>on ne sait pas quoi</translation>
    </message>
</context>
<context>
    <name>ModelPage</name>
    <message>
        <source>This machine draws no OpenGL 3.3, so the model cannot be shown here. Plan, elevation, sheets and lists work all the same; a driver such as Mesa&apos;s software renderer would bring the model back.</source>
        <translation>Cette machine ne dessine pas OpenGL 3.3 : le modèle ne peut pas être montré ici. Plan, élévation, fiches et listes fonctionnent quand même ; un pilote tel que le rendu logiciel de Mesa ramènerait le modèle.</translation>
    </message>
    <message>
        <source>Model</source>
        <translation>Modèle</translation>
    </message>
    <message>
        <source>The shell in space. Arrow keys turn it, with Shift they move it, plus and minus zoom.</source>
        <translation>La coque dans l’espace. Les flèches la tournent, avec Maj elles la déplacent, plus et moins l’agrandissent ou la réduisent.</translation>
    </message>
    <message>
        <source>Spread apart</source>
        <translation>Écarter</translation>
    </message>
    <message>
        <source>S&amp;pread</source>
        <translation>É&amp;carter</translation>
    </message>
    <message>
        <source>Raise: how many pieces stand</source>
        <translation>Levage : combien de pièces sont posées</translation>
    </message>
    <message>
        <source>&amp;Raise</source>
        <translation>&amp;Levage</translation>
    </message>
    <message>
        <source>Play the raise</source>
        <translation>Jouer le levage</translation>
    </message>
    <message>
        <source>no section</source>
        <translation>sans coupe</translation>
    </message>
    <message>
        <source>from the south</source>
        <translation>depuis le sud</translation>
    </message>
    <message>
        <source>from the east</source>
        <translation>depuis l’est</translation>
    </message>
    <message>
        <source>from above</source>
        <translation>depuis le dessus</translation>
    </message>
    <message>
        <source>Section plane</source>
        <translation>Plan de coupe</translation>
    </message>
    <message>
        <source>S&amp;ection</source>
        <translation>Co&amp;upe</translation>
    </message>
    <message>
        <source>Place of the section</source>
        <translation>Place de la coupe</translation>
    </message>
    <message>
        <source>by wall</source>
        <translation>par mur</translation>
    </message>
    <message>
        <source>by finding</source>
        <translation>par constat</translation>
    </message>
    <message>
        <source>by equal pieces</source>
        <translation>par pièces égales</translation>
    </message>
    <message>
        <source>Colour</source>
        <translation>Couleur</translation>
    </message>
    <message>
        <source>&amp;Colour</source>
        <translation>C&amp;ouleur</translation>
    </message>
    <message>
        <source>&amp;Tags</source>
        <translation>&amp;Repères</translation>
    </message>
    <message>
        <source>by kept and new</source>
        <translation>par neuf et ancien</translation>
    </message>
    <message>
        <source>corner %1</source>
        <translation>angle %1</translation>
    </message>
    <message>
        <source>by condition</source>
        <translation>par état du bois</translation>
    </message>
    <message>
        <source>by decision</source>
        <translation>par décision</translation>
    </message>
    <message>
        <source>by certainty</source>
        <translation>par certitude</translation>
    </message>
    <message>
        <source>by what is up</source>
        <translation>par levage</translation>
    </message>
</context>
<context>
    <name>NewShellDialog</name>
    <message>
        <source>hewn, %1</source>
        <translation>équarries, %1</translation>
    </message>
    <message>
        <source>New shell</source>
        <translation>Nouvelle coque</translation>
    </message>
    <message>
        <source>Rectangle</source>
        <translation>Rectangle</translation>
    </message>
    <message>
        <source>L</source>
        <translation>L</translation>
    </message>
    <message>
        <source>Inset porch</source>
        <translation>Porche rentrant</translation>
    </message>
    <message>
        <source>T</source>
        <translation>T</translation>
    </message>
    <message>
        <source>U</source>
        <translation>U</translation>
    </message>
    <message>
        <source>Cross</source>
        <translation>Croix</translation>
    </message>
    <message>
        <source>metric</source>
        <translation>métrique</translation>
    </message>
    <message>
        <source>feet and inches</source>
        <translation>pieds et pouces</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nom</translation>
    </message>
    <message>
        <source>&amp;Shape</source>
        <translation>&amp;Forme</translation>
    </message>
    <message>
        <source>&amp;Units</source>
        <translation>&amp;Unités</translation>
    </message>
    <message>
        <source>&amp;Width, west to east</source>
        <translation>&amp;Largeur, d’ouest en est</translation>
    </message>
    <message>
        <source>&amp;Depth, south to north</source>
        <translation>&amp;Profondeur, du sud au nord</translation>
    </message>
    <message>
        <source>&amp;Thickness</source>
        <translation>&amp;Épaisseur</translation>
    </message>
    <message>
        <source>&amp;Rounds</source>
        <translation>&amp;Rangs</translation>
    </message>
    <message>
        <source>&amp;Pitch</source>
        <translation>&amp;Pas</translation>
    </message>
    <message>
        <source>&amp;Gap</source>
        <translation>&amp;Jeu</translation>
    </message>
    <message>
        <source>&amp;Make it</source>
        <translation>La &amp;créer</translation>
    </message>
    <message>
        <source>Width of the recess</source>
        <translation>Largeur du renfoncement</translation>
    </message>
    <message>
        <source>Width of the wing</source>
        <translation>Largeur de l’aile</translation>
    </message>
    <message>
        <source>Width of the court</source>
        <translation>Largeur de la cour</translation>
    </message>
    <message>
        <source>Depth of the recess</source>
        <translation>Profondeur du renfoncement</translation>
    </message>
    <message>
        <source>Depth of the wing</source>
        <translation>Profondeur de l’aile</translation>
    </message>
    <message>
        <source>How far the arms stand out</source>
        <translation>Saillie des bras</translation>
    </message>
    <message>
        <source>Depth of the court</source>
        <translation>Profondeur de la cour</translation>
    </message>
    <message>
        <source>A part must be smaller than the whole, and every size more than nothing.</source>
        <translation>Une partie doit être plus petite que le tout, et toute dimension plus grande que zéro.</translation>
    </message>
    <message>
        <source>%1 pieces in %2 rounds, %3 high</source>
        <translation>%1 pièces en %2 rangs, hauteur %3</translation>
    </message>
    <message>
        <source>Drawn by hand</source>
        <translation>Dessinée à la main</translation>
    </message>
    <message>
        <source>Draw the corners and close the figure: click the first corner again, or press Enter.</source>
        <translation>Dessinez les angles et fermez la figure : cliquez de nouveau le premier angle, ou appuyez sur Entrée.</translation>
    </message>
    <message>
        <source>round, scoped over one another with saddles</source>
        <translation>rondes, creusées l’une sur l’autre en selles</translation>
    </message>
    <message>
        <source>From the &amp;left corner</source>
        <translation>Depuis l’angle &amp;gauche</translation>
    </message>
    <message>
        <source>L&amp;ogs and notches</source>
        <translation>Pièces et &amp;entailles</translation>
    </message>
    <message>
        <source>W&amp;ood</source>
        <translation>B&amp;ois</translation>
    </message>
    <message>
        <source>O&amp;verhang of the ends</source>
        <translation>&amp;Débord des bouts</translation>
    </message>
    <message>
        <source>Width of the wing, at its north end</source>
        <translation>Largeur de l’aile, à son bout nord</translation>
    </message>
    <message>
        <source>Depth of the main part, at its east end</source>
        <translation>Profondeur du corps principal, à son bout est</translation>
    </message>
    <message>
        <source>&amp;Diameter of the logs</source>
        <translation>&amp;Diamètre des pièces</translation>
    </message>
    <message>
        <source>Unsaved work</source>
        <translation>Travail non enregistré</translation>
    </message>
    <message>
        <source>The plan that was drawn is not made yet.</source>
        <translation>Le plan dessiné n’est pas encore réalisé.</translation>
    </message>
    <message>
        <source>&amp;Throw away</source>
        <translation>&amp;Jeter</translation>
    </message>
    <message>
        <source>&amp;Go on drawing</source>
        <translation>&amp;Continuer à dessiner</translation>
    </message>
    <message>
        <source>Sl&amp;anted walls</source>
        <translation>Murs de &amp;biais</translation>
    </message>
    <message>
        <source>Walls in any direction. Without it they run along the compass, unless Shift is held.</source>
        <translation>Murs dans n’importe quelle direction. Sans cela ils suivent la boussole, sauf si Maj est enfoncée.</translation>
    </message>
    <message>
        <source>Put right first what is not taken above: it says why.</source>
        <translation>Corrigez d’abord ce qui n’est pas accepté ci-dessus : la raison y est dite.</translation>
    </message>
    <message>
        <source>%1: %2 is out of bounds; expected %3</source>
        <translation>%1 : %2 est hors limites ; attendu : %3</translation>
    </message>
    <message>
        <source>%1 is short for a wall.</source>
        <translation>%1, c’est court pour un mur.</translation>
    </message>
</context>
<context>
    <name>NoteEdit</name>
    <message>
        <source>, not read yet: its sheet does not say how</source>
        <translation>, pas encore lu : sa feuille ne dit pas comment</translation>
    </message>
    <message>
        <source>, by %1</source>
        <translation>, par %1</translation>
    </message>
    <message>
        <source>, on %1</source>
        <translation>, le %1</translation>
    </message>
</context>
<context>
    <name>Photographs</name>
    <message>
        <source>is not there: it was moved or renamed, or the name is mistyped</source>
        <translation>n’est pas là : déplacée ou renommée, ou nom mal saisi</translation>
    </message>
    <message>
        <source>cannot be shown: it is no picture that this program reads</source>
        <translation>ne peut être montrée : ce n’est pas une image que ce programme lit</translation>
    </message>
    <message>
        <source>%1: seen once the document is saved beside its photographs</source>
        <translation>%1 : visible une fois le document enregistré à côté de ses photographies</translation>
    </message>
    <message>
        <source>%1 %2 (looked for in %3)</source>
        <translation>%1 %2 (cherchée dans %3)</translation>
    </message>
    <message>
        <source>Photograph %1</source>
        <translation>Photographie %1</translation>
    </message>
</context>
<context>
    <name>PictureSizeDialog</name>
    <message>
        <source>Drawing the picture</source>
        <translation>Dessin de l’image</translation>
    </message>
    <message>
        <source>Save this picture</source>
        <translation>Enregistrer cette image</translation>
    </message>
    <message>
        <source> pixels</source>
        <translation> pixels</translation>
    </message>
    <message>
        <source>&amp;Width</source>
        <translation>&amp;Largeur</translation>
    </message>
    <message>
        <source>&amp;Height</source>
        <translation>&amp;Hauteur</translation>
    </message>
    <message>
        <source>&amp;Save as…</source>
        <translation>&amp;Enregistrer sous…</translation>
    </message>
    <message>
        <source>The picture could not be made into a PNG.</source>
        <translation>L’image n’a pas pu être mise en PNG.</translation>
    </message>
    <message>
        <source>PNG picture (*.png)</source>
        <translation>Image PNG (*.png)</translation>
    </message>
    <message>
        <source>Something went wrong inside the program: %1. It is noted in %2.</source>
        <translation>Quelque chose s’est mal passé dans le programme : %1. C’est noté dans %2.</translation>
    </message>
    <message>
        <source>A PNG of the model as it is seen now, with its section and its tags; while the legend is on, with the legend, the name of the house and its state too.</source>
        <translation>Un PNG du modèle tel qu’il est vu maintenant, avec sa coupe et ses étiquettes ; tant que la légende est affichée, aussi avec elle, le nom de la maison et son état.</translation>
    </message>
</context>
<context>
    <name>PieceExport</name>
    <message>
        <source>STEP, the piece as a solid (*.step)</source>
        <translation>STEP, la pièce en solide (*.step)</translation>
    </message>
    <message>
        <source>PDF, its cut sheet (*.pdf)</source>
        <translation>PDF, sa fiche de taille (*.pdf)</translation>
    </message>
    <message>
        <source>Export log %1</source>
        <translation>Exporter la pièce %1</translation>
    </message>
    <message>
        <source>Export</source>
        <translation>Exporter</translation>
    </message>
</context>
<context>
    <name>PlanSketch</name>
    <message>
        <source>Sketch of the plan</source>
        <translation>Esquisse du plan</translation>
    </message>
    <message>
        <source>Click where the first corner shall be</source>
        <translation>Cliquez à l’endroit du premier angle</translation>
    </message>
    <message>
        <source>Walls at a slant: hold Shift, or tick Slanted walls; or type length and direction, %1, in degrees of the compass: 0 north, 90 east, 180 south, 270 west.</source>
        <translation>Murs de biais : tenez Maj, ou cochez Murs de biais ; ou tapez longueur et direction, %1, en degrés de la boussole : 0 nord, 90 est, 180 sud, 270 ouest.</translation>
    </message>
    <message>
        <source>4500 mm at 135</source>
        <translation>4500 mm à 135</translation>
    </message>
    <message>
        <source>14&apos; 9&quot; at 135</source>
        <translation>14&apos; 9&quot; à 135</translation>
    </message>
    <message>
        <source>a wall is longer than nothing</source>
        <translation>un mur est plus long que rien</translation>
    </message>
    <message>
        <source>the pointer shows no direction: move it, or type one, such as %1</source>
        <translation>le pointeur ne montre aucune direction : bougez-le, ou tapez-en une, par exemple %1</translation>
    </message>
    <message>
        <source>there the wall would run back over the one before it</source>
        <translation>là le mur reviendrait sur celui qui le précède</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>Click corners one after another; digits type an exact length, Enter closes, Backspace takes the last corner back. Escape clears, and Backspace brings all of it back.</source>
        <translation>Cliquez les angles l’un après l’autre ; les chiffres donnent une longueur exacte, Entrée ferme, Retour arrière reprend le dernier angle. Échap efface tout, et Retour arrière le ramène.</translation>
    </message>
    <message>
        <source>Cleared. Backspace or Ctrl+Z brings back what was drawn.</source>
        <translation>Effacé. Retour arrière ou Ctrl+Z ramène ce qui était dessiné.</translation>
    </message>
</context>
<context>
    <name>PlanView</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>stated: along %1, across %2</source>
        <translation>selon les pentes : en long %1, en travers %2</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>Walls from above. Page Up and Page Down choose a wall, arrow keys move it.</source>
        <translation>Les murs vus d’en haut. Page haut et Page bas choisissent un mur, les flèches le déplacent.</translation>
    </message>
    <message>
        <source>Drag, or type the length of wall %1</source>
        <translation>Tirez, ou tapez la longueur du mur %1</translation>
    </message>
    <message>
        <source>Corner %1: %2</source>
        <translation>Angle %1 : %2</translation>
    </message>
    <message>
        <source>Wall %1</source>
        <translation>Mur %1</translation>
    </message>
    <message>
        <source>Move wall</source>
        <translation>Déplacer le mur</translation>
    </message>
    <message>
        <source>Drag, or type how far from the left of wall %1</source>
        <translation>Glisser, ou taper la distance depuis la gauche du mur %1</translation>
    </message>
    <message>
        <source>Move partition</source>
        <translation>Déplacer la cloison</translation>
    </message>
    <message>
        <source>Add partition</source>
        <translation>Ajouter une cloison</translation>
    </message>
    <message>
        <source>Remove partition</source>
        <translation>Ôter la cloison</translation>
    </message>
    <message>
        <source>A partition %1 from the left of wall %2</source>
        <translation>Une cloison à %1 de la gauche du mur %2</translation>
    </message>
    <message>
        <source>Draw partition</source>
        <translation>Dessiner la cloison</translation>
    </message>
    <message>
        <source>it does not fit there</source>
        <translation>cela n’y tient pas</translation>
    </message>
    <message>
        <source>Click on the wall where the partition starts, then on the one where it ends; or drag it. Digits type how far from the wall&apos;s left; Escape leaves</source>
        <translation>Cliquez sur le mur où la cloison commence, puis sur celui où elle finit ; ou tirez-la. Des chiffres donnent la distance à la gauche du mur ; Échap quitte</translation>
    </message>
    <message>
        <source>no wall lies across from wall %1 there</source>
        <translation>aucun mur ne fait face au mur %1 à cet endroit</translation>
    </message>
    <message>
        <source>%1 does not fit: %2</source>
        <translation>%1 n’y tient pas : %2</translation>
    </message>
    <message>
        <source>%1, up to wall %2</source>
        <translation>%1, jusqu’au mur %2</translation>
    </message>
    <message>
        <source>A partition starts in an outer wall: click on one; Escape leaves</source>
        <translation>Une cloison commence dans un mur extérieur : cliquez sur l’un d’eux ; Échap quitte</translation>
    </message>
    <message>
        <source>Square to wall %1 it ends in wall %2: click there, or on wall %1 to start elsewhere</source>
        <translation>D’équerre avec le mur %1, elle finit dans le mur %2 : cliquez là, ou sur le mur %1 pour commencer ailleurs</translation>
    </message>
    <message>
        <source>wall</source>
        <translation>mur</translation>
    </message>
    <message>
        <source>wall in the elevation</source>
        <translation>mur de l’élévation</translation>
    </message>
    <message>
        <source>window</source>
        <translation>fenêtre</translation>
    </message>
    <message>
        <source>door</source>
        <translation>porte</translation>
    </message>
    <message>
        <source>timber of a floor</source>
        <translation>bois d’un plancher</translation>
    </message>
</context>
<context>
    <name>Print</name>
    <message>
        <source>Drawing the cut sheets</source>
        <translation>Dessin des fiches de taille</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Arrêter</translation>
    </message>
    <message>
        <source>Cut sheets</source>
        <translation>Fiches de taille</translation>
    </message>
    <message>
        <source>Cut sheet</source>
        <translation>Fiche de taille</translation>
    </message>
    <message>
        <source>Laying out the pages</source>
        <translation>Mise en pages</translation>
    </message>
</context>
<context>
    <name>ProjectFields</name>
    <message>
        <source>On title blocks and in STEP</source>
        <translation>Dans les cartouches et en STEP</translation>
    </message>
    <message>
        <source>Project number</source>
        <translation>Numéro du projet</translation>
    </message>
    <message>
        <source>Change project number</source>
        <translation>Changer le numéro du projet</translation>
    </message>
    <message>
        <source>Owner</source>
        <translation>Propriétaire</translation>
    </message>
    <message>
        <source>Change owner</source>
        <translation>Changer le propriétaire</translation>
    </message>
    <message>
        <source>Drawn by</source>
        <translation>Dessiné par</translation>
    </message>
    <message>
        <source>Change who drew it</source>
        <translation>Changer qui l’a dessiné</translation>
    </message>
    <message>
        <source>Approved by</source>
        <translation>Approuvé par</translation>
    </message>
    <message>
        <source>Change who approved it</source>
        <translation>Changer qui l’a approuvé</translation>
    </message>
    <message>
        <source>Revision</source>
        <translation>Révision</translation>
    </message>
    <message>
        <source>Change revision</source>
        <translation>Changer la révision</translation>
    </message>
</context>
<context>
    <name>RaisingPanel</name>
    <message>
        <source>raising</source>
        <translation>levage</translation>
    </message>
    <message>
        <source>taking down</source>
        <translation>démontage</translation>
    </message>
    <message>
        <source>Raising or taking down</source>
        <translation>Levage ou démontage</translation>
    </message>
    <message>
        <source>Done by</source>
        <translation>Fait par</translation>
    </message>
    <message>
        <source>Who did it</source>
        <translation>Qui l’a fait</translation>
    </message>
    <message>
        <source>Who did it: kept with what is ticked from now on</source>
        <translation>Qui l’a fait : gardé avec ce qui est coché dès maintenant</translation>
    </message>
    <message>
        <source>On, in any words</source>
        <translation>Le, en mots libres</translation>
    </message>
    <message>
        <source>When it was done</source>
        <translation>Quand cela a été fait</translation>
    </message>
    <message>
        <source>When it was done, in any words: kept with what is ticked from now on</source>
        <translation>Quand cela a été fait, en mots libres : gardé avec ce qui est coché dès maintenant</translation>
    </message>
    <message>
        <source>Lifts</source>
        <translation>Levées</translation>
    </message>
    <message>
        <source>Space ticks the lift as up, or as down; on a box of another column what that column says. It takes the tick back where there is one.</source>
        <translation>Espace coche la levée comme levée, ou comme descendue ; sur une case d’une autre colonne, ce que dit cette colonne. Elle décoche là où c’est coché.</translation>
    </message>
    <message>
        <source>What weights and order rest on</source>
        <translation>Sur quoi reposent poids et ordre</translation>
    </message>
    <message>
        <source>The order is being worked out.</source>
        <translation>L’ordre est en calcul.</translation>
    </message>
    <message numerus="yes">
        <source>%n pieces</source>
        <translation>
            <numerusform>%n pièce</numerusform>
            <numerusform>%n pièces</numerusform>
        </translation>
    </message>
    <message>
        <source>Tick %1: %2</source>
        <translation>Cocher %1 : %2</translation>
    </message>
    <message>
        <source>Take back the tick of %1: %2</source>
        <translation>Décocher %1 : %2</translation>
    </message>
</context>
<context>
    <name>ReasonsPage</name>
    <message>
        <source>Why this document cannot be built</source>
        <translation>Pourquoi ce document ne peut être construit</translation>
    </message>
    <message>
        <source>line %1</source>
        <translation>ligne %1</translation>
    </message>
    <message>
        <source>This document cannot be built yet</source>
        <translation>Ce document ne peut pas encore être construit</translation>
    </message>
    <message>
        <source>Put right what stands here, in the Text panel or in another editor; each line leads to its place. The shell comes up by itself as soon as it can be built.</source>
        <translation>Corrigez ce qui figure ici, dans le panneau Texte ou dans un autre éditeur ; chaque ligne mène à son endroit. La coque paraît d’elle-même dès qu’elle peut être construite.</translation>
    </message>
</context>
<context>
    <name>RecordBoxes</name>
    <message>
        <source>Log</source>
        <translation>Pièce</translation>
    </message>
    <message>
        <source>Tag</source>
        <translation>Repère</translation>
    </message>
    <message>
        <source>Wood</source>
        <translation>Bois</translation>
    </message>
    <message>
        <source>Length over all</source>
        <translation>Longueur hors tout</translation>
    </message>
    <message>
        <source>Between shoulders</source>
        <translation>Entre épaulements</translation>
    </message>
    <message>
        <source>Measured from</source>
        <translation>Mesurée depuis</translation>
    </message>
    <message>
        <source>Butt at</source>
        <translation>Gros bout à</translation>
    </message>
    <message>
        <source>Bow</source>
        <translation>Cintrage</translation>
    </message>
    <message>
        <source>Wind</source>
        <translation>Gauchissement</translation>
    </message>
    <message>
        <source>Finish and marks</source>
        <translation>Finition et marques</translation>
    </message>
    <message>
        <source>Outside</source>
        <translation>Extérieur</translation>
    </message>
    <message>
        <source>Inside</source>
        <translation>Intérieur</translation>
    </message>
    <message>
        <source>Top</source>
        <translation>Dessus</translation>
    </message>
    <message>
        <source>Under</source>
        <translation>Dessous</translation>
    </message>
    <message>
        <source>Old marks</source>
        <translation>Vieilles marques</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>Condition</source>
        <translation>État du bois</translation>
    </message>
    <message>
        <source>What it is like</source>
        <translation>Comment il est</translation>
    </message>
    <message>
        <source>Cause</source>
        <translation>Cause</translation>
    </message>
    <message>
        <source>Urgency</source>
        <translation>Urgence</translation>
    </message>
    <message>
        <source>Photographs, sheet, who says so</source>
        <translation>Photographies, feuille, qui le dit</translation>
    </message>
    <message>
        <source>Photographs</source>
        <translation>Photographies</translation>
    </message>
    <message>
        <source>Sheet</source>
        <translation>Feuille</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Par</translation>
    </message>
    <message>
        <source>On</source>
        <translation>Le</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Hauteur</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Largeur</translation>
    </message>
    <message>
        <source>Tail at shoulder, outside</source>
        <translation>Queue à l’épaulement, ext.</translation>
    </message>
    <message>
        <source>Tail at shoulder, inside</source>
        <translation>Queue à l’épaulement, int.</translation>
    </message>
    <message>
        <source>Tail at end, outside</source>
        <translation>Queue au bout, ext.</translation>
    </message>
    <message>
        <source>Tail at end, inside</source>
        <translation>Queue au bout, int.</translation>
    </message>
    <message>
        <source>Overhang</source>
        <translation>Débord</translation>
    </message>
    <message>
        <source>Gap under the tail</source>
        <translation>Jeu sous la queue</translation>
    </message>
    <message>
        <source>Level of its upper edge</source>
        <translation>Niveau de l’arête haute</translation>
    </message>
    <message>
        <source>Read from plane</source>
        <translation>Lu depuis le plan</translation>
    </message>
    <message>
        <source>Joint</source>
        <translation>Assemblage</translation>
    </message>
    <message>
        <source>At</source>
        <translation>À</translation>
    </message>
    <message>
        <source>Gap below</source>
        <translation>Jeu dessous</translation>
    </message>
    <message>
        <source>Gap above</source>
        <translation>Jeu dessus</translation>
    </message>
    <message>
        <source>On faces</source>
        <translation>Sur les faces</translation>
    </message>
    <message>
        <source>Wood is</source>
        <translation>Le bois est</translation>
    </message>
    <message>
        <source>From</source>
        <translation>De</translation>
    </message>
    <message>
        <source>To</source>
        <translation>À</translation>
    </message>
    <message>
        <source>How deep</source>
        <translation>Profondeur</translation>
    </message>
    <message>
        <source>Peg is</source>
        <translation>Cheville</translation>
    </message>
    <message>
        <source>Diameter</source>
        <translation>Diamètre</translation>
    </message>
    <message>
        <source>Depth</source>
        <translation>Profondeur</translation>
    </message>
    <message>
        <source>What was cut</source>
        <translation>Ce qui a été coupé</translation>
    </message>
    <message>
        <source>Why one thinks so</source>
        <translation>Pourquoi on le pense</translation>
    </message>
    <message>
        <source>Measured along the log</source>
        <translation>Mesures le long de la pièce</translation>
    </message>
    <message>
        <source>Zones of its wood</source>
        <translation>Zones du bois</translation>
    </message>
    <message>
        <source>Pegs</source>
        <translation>Chevilles</translation>
    </message>
    <message>
        <source>Later cuts</source>
        <translation>Coupes ultérieures</translation>
    </message>
    <message>
        <source>Bow to the</source>
        <translation>Flèche vers</translation>
    </message>
    <message>
        <source>summer</source>
        <translation>été</translation>
    </message>
    <message>
        <source>autumn</source>
        <translation>automne</translation>
    </message>
    <message>
        <source>winter</source>
        <translation>hiver</translation>
    </message>
    <message>
        <source>spring</source>
        <translation>printemps</translation>
    </message>
    <message>
        <source>Tried with</source>
        <translation>Essayé avec</translation>
    </message>
    <message>
        <source>On face</source>
        <translation>Sur la face</translation>
    </message>
    <message>
        <source>What it showed</source>
        <translation>Ce que cela a montré</translation>
    </message>
    <message>
        <source>Moisture, percent</source>
        <translation>Humidité, pour cent</translation>
    </message>
    <message>
        <source>Season</source>
        <translation>Saison</translation>
    </message>
    <message>
        <source>Probe</source>
        <translation>Sonde</translation>
    </message>
    <message>
        <source>What was tried</source>
        <translation>Essais</translation>
    </message>
    <message>
        <source>Moisture</source>
        <translation>Humidité</translation>
    </message>
</context>
<context>
    <name>RecordForm</name>
    <message>
        <source>Ends</source>
        <translation>Bouts</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>not named</source>
        <translation>sans nom</translation>
    </message>
    <message>
        <source>%1, end %2</source>
        <translation>%1, bout %2</translation>
    </message>
</context>
<context>
    <name>RecordMarks</name>
    <message>
        <source>no condition recorded</source>
        <translation>aucun état relevé</translation>
    </message>
    <message>
        <source>told in words</source>
        <translation>dit en mots</translation>
    </message>
    <message>
        <source>not decided</source>
        <translation>non décidé</translation>
    </message>
    <message>
        <source>not recorded: by the plan alone</source>
        <translation>non relevé : par le plan seul</translation>
    </message>
    <message>
        <source>partly measured</source>
        <translation>en partie mesuré</translation>
    </message>
    <message>
        <source>proposed only</source>
        <translation>proposé seulement</translation>
    </message>
    <message>
        <source>nothing is ticked</source>
        <translation>rien n’est coché</translation>
    </message>
    <message>
        <source>taken down</source>
        <translation>descendue</translation>
    </message>
    <message>
        <source>cut</source>
        <translation>taillée</translation>
    </message>
    <message>
        <source>checked</source>
        <translation>contrôlée</translation>
    </message>
    <message>
        <source>up</source>
        <translation>levée</translation>
    </message>
    <message>
        <source>pegged</source>
        <translation>chevillée</translation>
    </message>
    <message>
        <source>zones where they are: the wider the bands, the worse</source>
        <translation>zones là où elles sont : plus les bandes sont larges, pire c’est</translation>
    </message>
    <message>
        <source>zones where they are; dashed: on the inside</source>
        <translation>zones là où elles sont ; en tirets : à l’intérieur</translation>
    </message>
</context>
<context>
    <name>RecordPanel</name>
    <message>
        <source>%1 is not recorded, and where it was found is known in the house&apos;s own state alone: see the state &quot;%2&quot; to record it.</source>
        <translation>%1 n’est pas relevée, et l’endroit où elle a été trouvée n’est connu que dans l’état propre de la maison : voyez l’état « %2 » pour la relever.</translation>
    </message>
    <message>
        <source>Decid&amp;e…</source>
        <translation>Décid&amp;er…</translation>
    </message>
    <message>
        <source>Log that is recorded</source>
        <translation>Pièce relevée</translation>
    </message>
    <message>
        <source>Survey</source>
        <translation>Campagne de relevé</translation>
    </message>
    <message>
        <source>Choose a log in any view: what is typed here is recorded of it.</source>
        <translation>Choisissez une pièce dans une vue : ce qui est saisi ici en est relevé.</translation>
    </message>
    <message>
        <source>%1 (not recorded)</source>
        <translation>%1 (non relevée)</translation>
    </message>
    <message>
        <source>Not recorded yet: what is typed into any box begins its record.</source>
        <translation>Pas encore relevée : ce qui est saisi dans une case commence son relevé.</translation>
    </message>
    <message>
        <source>Decided: %1</source>
        <translation>Décidé : %1</translation>
    </message>
    <message>
        <source>before that: %1</source>
        <translation>avant cela : %1</translation>
    </message>
    <message>
        <source>Nothing is decided of it.</source>
        <translation>Rien n’en est décidé.</translation>
    </message>
    <message>
        <source>Record log %1: %2</source>
        <translation>Relever la pièce %1 : %2</translation>
    </message>
    <message>
        <source>Decide about log %1: %2</source>
        <translation>Décider de la pièce %1 : %2</translation>
    </message>
    <message>
        <source>Add photo&amp;graphs…</source>
        <translation>Ajouter des photo&amp;graphies…</translation>
    </message>
    <message>
        <source>Photographs of the log</source>
        <translation>Photographies de la pièce</translation>
    </message>
    <message>
        <source>Pictures (*.jpg *.jpeg *.png *.tif *.tiff)</source>
        <translation>Images (*.jpg *.jpeg *.png *.tif *.tiff)</translation>
    </message>
    <message>
        <source>Photographs of log %1</source>
        <translation>Photographies de la pièce %1</translation>
    </message>
</context>
<context>
    <name>SceneColours</name>
    <message>
        <source>kept</source>
        <translation>conservé</translation>
    </message>
    <message>
        <source>patched</source>
        <translation>réparé</translation>
    </message>
    <message>
        <source>replacement</source>
        <translation>remplacement</translation>
    </message>
    <message>
        <source>new</source>
        <translation>neuf</translation>
    </message>
    <message>
        <source>error</source>
        <translation>erreur</translation>
    </message>
    <message>
        <source>to decide</source>
        <translation>à décider</translation>
    </message>
    <message>
        <source>worth knowing</source>
        <translation>bon à savoir</translation>
    </message>
    <message>
        <source>no finding</source>
        <translation>sans constat</translation>
    </message>
    <message>
        <source>the only one of its kind</source>
        <translation>seul de son espèce</translation>
    </message>
    <message>
        <source>every other colour: equal pieces</source>
        <translation>toute autre couleur : pièces égales</translation>
    </message>
</context>
<context>
    <name>SheetView</name>
    <message>
        <source>Cut sheet</source>
        <translation>Fiche de taille</translation>
    </message>
    <message>
        <source>The cut sheet of the chosen log. Page Up and Page Down turn its pages.</source>
        <translation>La fiche de taille de la pièce choisie. Page haut et Page bas tournent les pages.</translation>
    </message>
    <message>
        <source>Choose a log to see its cut sheet.</source>
        <translation>Choisissez une pièce pour voir sa fiche de taille.</translation>
    </message>
    <message>
        <source>Drawing the cut sheet of %1</source>
        <translation>La fiche de taille de %1 se dessine</translation>
    </message>
    <message>
        <source>Sheet %1 of %2: Page Up, Page Down</source>
        <translation>Fiche %1 sur %2 : Page haut, Page bas</translation>
    </message>
    <message>
        <source>The cut sheet of %1 could not be drawn.</source>
        <translation>La fiche de taille de %1 n’a pas pu être dessinée.</translation>
    </message>
</context>
<context>
    <name>ShellPanel</name>
    <message>
        <source>not stated: eastern hemlock is taken</source>
        <translation>non indiqué : la pruche du Canada est prise</translation>
    </message>
    <message>
        <source>level</source>
        <translation>de niveau</translation>
    </message>
    <message>
        <source>staggered</source>
        <translation>décalé</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nom</translation>
    </message>
    <message>
        <source>&amp;Thickness</source>
        <translation>&amp;Épaisseur</translation>
    </message>
    <message>
        <source>Change thickness</source>
        <translation>Changer l’épaisseur</translation>
    </message>
    <message>
        <source>&amp;Rounds</source>
        <translation>&amp;Rangs</translation>
    </message>
    <message>
        <source>&amp;Pitch</source>
        <translation>&amp;Pas</translation>
    </message>
    <message>
        <source>Change pitch</source>
        <translation>Changer le pas</translation>
    </message>
    <message>
        <source>&amp;Gap</source>
        <translation>&amp;Jeu</translation>
    </message>
    <message>
        <source>Change gap</source>
        <translation>Changer le jeu</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Hauteur</translation>
    </message>
    <message>
        <source>T&amp;op</source>
        <translation>&amp;Haut</translation>
    </message>
    <message>
        <source>Notc&amp;h</source>
        <translation>&amp;Entaille</translation>
    </message>
    <message>
        <source>&amp;Slope</source>
        <translation>Pen&amp;te</translation>
    </message>
    <message>
        <source>O&amp;verhang</source>
        <translation>&amp;Débord</translation>
    </message>
    <message>
        <source>Change overhang</source>
        <translation>Changer le débord</translation>
    </message>
    <message>
        <source>&amp;Least tail</source>
        <translation>&amp;Moindre queue</translation>
    </message>
    <message>
        <source>Change least tail</source>
        <translation>Changer la moindre queue</translation>
    </message>
    <message>
        <source>&amp;Wood</source>
        <translation>&amp;Bois</translation>
    </message>
    <message>
        <source>Name shell</source>
        <translation>Nommer la coque</translation>
    </message>
    <message>
        <source>Change rounds</source>
        <translation>Changer les rangs</translation>
    </message>
    <message>
        <source>Change notch</source>
        <translation>Changer l’entaille</translation>
    </message>
    <message>
        <source>Change top</source>
        <translation>Changer le haut</translation>
    </message>
    <message>
        <source>Change wood</source>
        <translation>Changer le bois</translation>
    </message>
    <message>
        <source>Change slope</source>
        <translation>Changer la pente</translation>
    </message>
    <message>
        <source>Shell</source>
        <translation>Coque</translation>
    </message>
</context>
<context>
    <name>StandBanner</name>
    <message>
        <source>Drawn as stated; it cannot be built. %1</source>
        <translation>Dessiné tel qu’énoncé ; ne peut être construit. %1</translation>
    </message>
    <message>
        <source>This is the shell as it last stood; it cannot be built now. %1</source>
        <translation>Ceci est la coque telle qu’elle tenait en dernier ; elle ne peut être construite à présent. %1</translation>
    </message>
    <message>
        <source>There is nothing to show yet. %1</source>
        <translation>Il n’y a encore rien à montrer. %1</translation>
    </message>
</context>
<context>
    <name>StartPage</name>
    <message>
        <source>One room of five rounds, for teaching</source>
        <translation>Une pièce de cinq rangs, pour enseigner</translation>
    </message>
    <message>
        <source>L-shaped house of thirteen rounds</source>
        <translation>Maison en L de treize rangs</translation>
    </message>
    <message>
        <source>Long house with an inset porch</source>
        <translation>Maison longue à porche rentrant</translation>
    </message>
    <message>
        <source>Cabin of round logs with a partition</source>
        <translation>Cabane en rondins avec une cloison</translation>
    </message>
    <message>
        <source>A shell of hewn logs, from the plan to the last peg</source>
        <translation>Une coque de pièces équarries, du plan à la dernière cheville</translation>
    </message>
    <message>
        <source>New shell</source>
        <translation>Nouvelle coque</translation>
    </message>
    <message>
        <source>From a shape, with sizes in metres or in feet and inches</source>
        <translation>À partir d’une forme, en mètres ou en pieds et pouces</translation>
    </message>
    <message>
        <source>Open a document</source>
        <translation>Ouvrir un document</translation>
    </message>
    <message>
        <source>Or drag one into the window</source>
        <translation>Ou en glisser un dans la fenêtre</translation>
    </message>
    <message>
        <source>A demo to look at and to change</source>
        <translation>Un exemple à regarder et à changer</translation>
    </message>
    <message>
        <source>&amp;Recent documents</source>
        <translation>Documents &amp;récents</translation>
    </message>
    <message>
        <source>Recent documents</source>
        <translation>Documents récents</translation>
    </message>
    <message>
        <source>Draw a new shell</source>
        <translation>Dessiner une nouvelle coque</translation>
    </message>
    <message>
        <source>Corner by corner on a sheet, with lengths typed where they matter</source>
        <translation>Angle par angle sur une feuille, avec des longueurs tapées là où elles comptent</translation>
    </message>
    <message>
        <source>Old house that stands, with its record</source>
        <translation>Maison ancienne debout, avec son relevé</translation>
    </message>
    <message>
        <source>A demo; to record your own, begin a new shell, then Shell › Record an old house</source>
        <translation>Un exemple ; pour relever la vôtre : une nouvelle coque, puis Coque › Relever une maison ancienne</translation>
    </message>
</context>
<context>
    <name>StateBar</name>
    <message>
        <source>As it was measured: seen, not edited. Numbers are changed in the panel Record, the plan in the state %1.</source>
        <translation>Telle que mesurée : se regarde, ne se modifie pas. Les nombres se changent dans le volet Relevé, le plan dans l’état %1.</translation>
    </message>
    <message>
        <source>Edits change this state, and what stands on it: %1 stays as it is. The record is the same in all states.</source>
        <translation>Les modifications changent cet état et ceux qui reposent dessus : %1 reste tel quel. Le relevé est le même dans tous les états.</translation>
    </message>
    <message>
        <source>Edits change the house as the document states it, and all states that stand on it.</source>
        <translation>Les modifications changent la maison telle que le document l’énonce, et tous les états qui reposent dessus.</translation>
    </message>
    <message>
        <source>State of the house that is seen</source>
        <translation>État de la maison qui est vu</translation>
    </message>
    <message>
        <source>State &amp;of the house</source>
        <translation>Éta&amp;t de la maison</translation>
    </message>
    <message>
        <source>as measured: not edited here</source>
        <translation>tel que mesuré : sans modification ici</translation>
    </message>
    <message>
        <source>edits stay in this state</source>
        <translation>les modifications restent dans cet état</translation>
    </message>
    <message>
        <source>edits are in all states</source>
        <translation>les modifications valent pour tous les états</translation>
    </message>
</context>
<context>
    <name>StepFields</name>
    <message>
        <source>Steps of the foundation</source>
        <translation>Ressauts de la fondation</translation>
    </message>
    <message>
        <source>Step of the foundation</source>
        <translation>Ressaut de la fondation</translation>
    </message>
    <message>
        <source>Add a step of the foundation</source>
        <translation>Ajouter un ressaut de la fondation</translation>
    </message>
    <message>
        <source>Remove the step of the foundation</source>
        <translation>Retirer le ressaut de la fondation</translation>
    </message>
    <message>
        <source>St&amp;ep</source>
        <translation>R&amp;essaut</translation>
    </message>
    <message>
        <source>Step from the left</source>
        <translation>Ressaut depuis la gauche</translation>
    </message>
    <message>
        <source>Step width</source>
        <translation>Largeur du ressaut</translation>
    </message>
    <message>
        <source>Step rise</source>
        <translation>Hauteur du ressaut</translation>
    </message>
    <message>
        <source>Change step of the foundation</source>
        <translation>Changer un ressaut de la fondation</translation>
    </message>
    <message>
        <source>Step %1</source>
        <translation>Ressaut %1</translation>
    </message>
    <message>
        <source>Add step of the foundation</source>
        <translation>Ajouter un ressaut de la fondation</translation>
    </message>
    <message>
        <source>Remove step of the foundation</source>
        <translation>Retirer un ressaut de la fondation</translation>
    </message>
</context>
<context>
    <name>SurveyFields</name>
    <message>
        <source>not said</source>
        <translation>non dit</translation>
    </message>
    <message>
        <source>Who measured</source>
        <translation>Qui a mesuré</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Quand</translation>
    </message>
    <message>
        <source>Numbers are in</source>
        <translation>Nombres en</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>cm</source>
        <translation>cm</translation>
    </message>
    <message>
        <source>m</source>
        <translation>m</translation>
    </message>
    <message>
        <source>inches</source>
        <translation>pouces</translation>
    </message>
    <message>
        <source>feet</source>
        <translation>pieds</translation>
    </message>
    <message>
        <source>3.10.1 counts</source>
        <translation>3.10.1 compte en</translation>
    </message>
    <message>
        <source>quarters of an inch</source>
        <translation>quarts de pouce</translation>
    </message>
    <message>
        <source>eighths</source>
        <translation>huitièmes</translation>
    </message>
    <message>
        <source>sixteenths</source>
        <translation>seizièmes</translation>
    </message>
    <message>
        <source>3.10 is</source>
        <translation>3.10 veut dire</translation>
    </message>
    <message>
        <source>feet and inches</source>
        <translation>pieds et pouces</translation>
    </message>
    <message>
        <source>decimal feet</source>
        <translation>pieds décimaux</translation>
    </message>
    <message>
        <source>How exact</source>
        <translation>Exactitude</translation>
    </message>
    <message>
        <source>Not seen</source>
        <translation>Non vu</translation>
    </message>
    <message>
        <source>Survey: %1</source>
        <translation>Campagne : %1</translation>
    </message>
</context>
<context>
    <name>TextPanel</name>
    <message>
        <source>Text of the document</source>
        <translation>Texte du document</translation>
    </message>
    <message>
        <source>Edit text</source>
        <translation>Modifier le texte</translation>
    </message>
</context>
<context>
    <name>ThingMenu</name>
    <message>
        <source>C&amp;hoose</source>
        <translation>C&amp;hoisir</translation>
    </message>
    <message>
        <source>Log %1</source>
        <translation>Pièce %1</translation>
    </message>
    <message>
        <source>Wall %1</source>
        <translation>Mur %1</translation>
    </message>
    <message>
        <source>Corner %1</source>
        <translation>Angle %1</translation>
    </message>
    <message>
        <source>Show its cut &amp;sheet</source>
        <translation>Montrer sa fiche de &amp;taille</translation>
    </message>
    <message>
        <source>Show it in the &amp;elevation</source>
        <translation>La montrer dans l’&amp;élévation</translation>
    </message>
    <message>
        <source>Show its &amp;sizes and neighbours</source>
        <translation>Montrer ses &amp;mesures et ses voisins</translation>
    </message>
    <message>
        <source>Show its &amp;joint</source>
        <translation>Montrer son &amp;assemblage</translation>
    </message>
    <message>
        <source>Show it in the cut &amp;list</source>
        <translation>La montrer dans la &amp;liste</translation>
    </message>
    <message>
        <source>E&amp;xport this piece…</source>
        <translation>E&amp;xporter cette pièce…</translation>
    </message>
    <message>
        <source>&amp;Print its cut sheet…</source>
        <translation>Im&amp;primer sa fiche de taille…</translation>
    </message>
    <message>
        <source>Show its &amp;elevation</source>
        <translation>Montrer son &amp;élévation</translation>
    </message>
    <message>
        <source>Show its &amp;sizes</source>
        <translation>Montrer ses &amp;mesures</translation>
    </message>
    <message>
        <source>Show its &amp;findings (%1)</source>
        <translation>Montrer ses &amp;constats (%1)</translation>
    </message>
    <message>
        <source>Le&amp;gend</source>
        <translation>Lé&amp;gende</translation>
    </message>
    <message>
        <source>Add a &amp;window here</source>
        <translation>Ajouter une &amp;fenêtre ici</translation>
    </message>
    <message>
        <source>Add a &amp;door here</source>
        <translation>Ajouter une &amp;porte ici</translation>
    </message>
    <message>
        <source>Add a s&amp;tep of the foundation here</source>
        <translation>Ajouter ici un re&amp;ssaut de la fondation</translation>
    </message>
    <message>
        <source>&amp;Record it</source>
        <translation>La rele&amp;ver</translation>
    </message>
    <message>
        <source>Nothing is recorded of it: that is done in the state %1</source>
        <translation>Rien n’en est relevé : cela se fait dans l’état %1</translation>
    </message>
    <message>
        <source>Another log of the record has its tag</source>
        <translation>Une autre pièce du relevé porte son repère</translation>
    </message>
    <message>
        <source>De&amp;cide about log %1</source>
        <translation>&amp;Décider de la pièce %1</translation>
    </message>
</context>
<context>
    <name>WayEdit</name>
    <message>
        <source>east</source>
        <translation>est</translation>
    </message>
    <message>
        <source>north-east</source>
        <translation>nord-est</translation>
    </message>
    <message>
        <source>north</source>
        <translation>nord</translation>
    </message>
    <message>
        <source>north-west</source>
        <translation>nord-ouest</translation>
    </message>
    <message>
        <source>west</source>
        <translation>ouest</translation>
    </message>
    <message>
        <source>south-west</source>
        <translation>sud-ouest</translation>
    </message>
    <message>
        <source>south</source>
        <translation>sud</translation>
    </message>
    <message>
        <source>south-east</source>
        <translation>sud-est</translation>
    </message>
    <message>
        <source>the direction is missing</source>
        <translation>la direction manque</translation>
    </message>
    <message>
        <source>%1 is no direction</source>
        <translation>%1 n’est pas une direction</translation>
    </message>
    <message>
        <source>degrees of the compass from 0 to 360, such as 135, or a word such as south-east</source>
        <translation>des degrés de la boussole de 0 à 360, comme 135, ou un mot comme sud-est</translation>
    </message>
    <message>
        <source>at</source>
        <translation>à</translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message>
        <source>%1 to %2 %3</source>
        <translation>%1 à %2 %3</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>%1 (%2 by its rounds)</source>
        <translation>%1 (%2 d’après ses rangs)</translation>
    </message>
    <message>
        <source>A bare number is in millimetres: 8500 or 8.5 m.</source>
        <translation>Un nombre seul est en millimètres : 8500 ou 8,5 m.</translation>
    </message>
    <message>
        <source>A bare number is in inches: 28&apos; for 28 feet.</source>
        <translation>Un nombre seul est en pouces : 28&apos; pour 28 pieds.</translation>
    </message>
    <message>
        <source>%1 ft³</source>
        <translation>%1 pi³</translation>
    </message>
</context>
<context>
    <name>kernel</name>
    <message>
        <source>what was done: what = &quot;up&quot;</source>
        <translation>ce qui fut fait : what = &quot;up&quot;</translation>
    </message>
    <message>
        <source>the tags of the pieces: pieces = [&quot;A-01-1&quot;]</source>
        <translation>les repères des pièces : pieces = [&quot;A-01-1&quot;]</translation>
    </message>
    <message>
        <source>piece %1 is ticked twice for the same thing, and counts once: take one of the two out</source>
        <translation>la pièce %1 est cochée deux fois pour la même chose, et compte une fois : ôtez l’une des deux</translation>
    </message>
    <message>
        <source>a compass word such as &quot;east&quot; or &quot;north-west&quot;, or &quot;30 deg north of east&quot;</source>
        <translation>un mot de la boussole comme &quot;east&quot; ou &quot;north-west&quot;, ou &quot;30 deg north of east&quot;</translation>
    </message>
    <message>
        <source>the file is larger than 4 MB (4,000,000 bytes)</source>
        <translation>le fichier dépasse 4 Mo (4 000 000 octets)</translation>
    </message>
    <message>
        <source>a document written by hand</source>
        <translation>un document écrit à la main</translation>
    </message>
    <message>
        <source>this is not a text file: %1 at offset %2</source>
        <translation>ce n’est pas un fichier texte : %1 à la position %2</translation>
    </message>
    <message>
        <source>text in UTF-8</source>
        <translation>du texte en UTF-8</translation>
    </message>
    <message>
        <source>a dotted name has more than 8 parts</source>
        <translation>un nom à points a plus de 8 parties</translation>
    </message>
    <message>
        <source>the file has more than 20,000 brackets and dots</source>
        <translation>le fichier a plus de 20 000 crochets et points</translation>
    </message>
    <message>
        <source>a document as FORMAT.md describes it</source>
        <translation>un document tel que FORMAT.md le décrit</translation>
    </message>
    <message>
        <source>a [table] header, or key = value with a key of one word</source>
        <translation>un en-tête [table], ou clé = valeur avec une clé d’un mot</translation>
    </message>
    <message>
        <source>a value behind the equals sign</source>
        <translation>une valeur après le signe égal</translation>
    </message>
    <message>
        <source>nothing behind the closing quote; inch marks end the text, so write &quot;7 ft 6 in&quot; or &apos;7 ft 6&quot;&apos;</source>
        <translation>rien après le guillemet fermant ; le signe des pouces termine le texte : écrire &quot;7 ft 6 in&quot; ou &apos;7 ft 6&quot;&apos;</translation>
    </message>
    <message>
        <source>a closing quote on the same line</source>
        <translation>un guillemet fermant sur la même ligne</translation>
    </message>
    <message>
        <source>lengths and slopes in quotes, such as &quot;8 1/2 in&quot; or &quot;1:8&quot;</source>
        <translation>longueurs et pentes entre guillemets, comme &quot;8 1/2 in&quot; ou &quot;1:8&quot;</translation>
    </message>
    <message>
        <source>a list such as [&quot;A&quot;, &quot;B&quot;]</source>
        <translation>une liste comme [&quot;A&quot;, &quot;B&quot;]</translation>
    </message>
    <message>
        <source>text in quotes, such as &quot;door&quot;</source>
        <translation>du texte entre guillemets, comme &quot;door&quot;</translation>
    </message>
    <message>
        <source>the text is not TOML: %1</source>
        <translation>le texte n’est pas du TOML : %1</translation>
    </message>
    <message>
        <source>each statement and [table] once, and [[two brackets]] where there are several</source>
        <translation>chaque clé et chaque [table] une seule fois, et [[deux crochets]] où il y en a plusieurs</translation>
    </message>
    <message>
        <source>roundlay = 1 at the top of the document</source>
        <translation>roundlay = 1 en tête du document</translation>
    </message>
    <message>
        <source>the document is written in version %1 of the format, which is newer than this program</source>
        <translation>le document est écrit dans la version %1 du format, plus récente que ce programme</translation>
    </message>
    <message>
        <source>the path of a .roundlay document</source>
        <translation>le chemin d’un document .roundlay</translation>
    </message>
    <message>
        <source>the file cannot be reached: %1</source>
        <translation>le fichier ne peut être atteint : %1</translation>
    </message>
    <message>
        <source>this is a folder, not a document</source>
        <translation>c’est un dossier, pas un document</translation>
    </message>
    <message>
        <source>the file cannot be opened: %1</source>
        <translation>le fichier ne peut être ouvert : %1</translation>
    </message>
    <message>
        <source>the file cannot be read: %1</source>
        <translation>le fichier ne peut être lu : %1</translation>
    </message>
    <message>
        <source>a file that you may read</source>
        <translation>un fichier que vous avez le droit de lire</translation>
    </message>
    <message>
        <source>%1 further problems are not listed</source>
        <translation>%1 autres problèmes ne sont pas énumérés</translation>
    </message>
    <message>
        <source>from the wall that the joists start in, its inside face, to the beam&apos;s middle</source>
        <translation>de la face intérieure du mur où commencent les solives au milieu de la poutre</translation>
    </message>
    <message>
        <source>the width of the beam</source>
        <translation>la largeur de la poutre</translation>
    </message>
    <message>
        <source>the height of the beam</source>
        <translation>la hauteur de la poutre</translation>
    </message>
    <message>
        <source>from the room&apos;s left side to the opening</source>
        <translation>du côté gauche de la salle à la trémie</translation>
    </message>
    <message>
        <source>from the wall that the joists start in to the opening</source>
        <translation>du mur où commencent les solives à la trémie</translation>
    </message>
    <message>
        <source>the clear width of the opening, along that wall</source>
        <translation>la largeur libre de la trémie, le long de ce mur</translation>
    </message>
    <message>
        <source>the clear length of the opening, along the joists</source>
        <translation>la longueur libre de la trémie, le long des solives</translation>
    </message>
    <message>
        <source>the wall that its joists start in: from = &quot;A&quot;</source>
        <translation>le mur où commencent ses solives : from = &quot;A&quot;</translation>
    </message>
    <message>
        <source>the wall across the room: to = &quot;C&quot;</source>
        <translation>le mur d’en face : to = &quot;C&quot;</translation>
    </message>
    <message>
        <source>name = &quot;G&quot;</source>
        <translation>name = &quot;G&quot;</translation>
    </message>
    <message>
        <source>how high the tops of its joists lie over the foundation</source>
        <translation>la hauteur du dessus de ses solives au-dessus de la fondation</translation>
    </message>
    <message>
        <source>round %1 of wall &quot;%2&quot; is stated twice; where this one differs from the other in line %3, this one counts</source>
        <translation>le rang %1 du mur &quot;%2&quot; est indiqué deux fois ; où celui-ci diffère de l’autre, à la ligne %3, c’est celui-ci qui compte</translation>
    </message>
    <message>
        <source>&quot;%1&quot; cannot be stated of one piece of a round, whose logs lie in one straight line</source>
        <translation>&quot;%1&quot; ne peut être indiqué d’une seule pièce d’un rang, dont les pièces sont en une seule ligne droite</translation>
    </message>
    <message>
        <source>it in a [[log]] without &quot;piece&quot;</source>
        <translation>cette clé dans un [[log]] sans &quot;piece&quot;</translation>
    </message>
    <message>
        <source>its tag, which no other log has: tag = &quot;A 1.1&quot;</source>
        <translation>son repère, qu’aucune autre pièce n’a : tag = &quot;A 1.1&quot;</translation>
    </message>
    <message>
        <source>the corner it lies in: corner = &quot;NE&quot;</source>
        <translation>l’angle où il se trouve : corner = &quot;NE&quot;</translation>
    </message>
    <message>
        <source>a number from 0 to 300</source>
        <translation>un nombre de 0 à 300</translation>
    </message>
    <message>
        <source>the moisture: percent = 18</source>
        <translation>l’humidité : percent = 18</translation>
    </message>
    <message>
        <source>its number or name: name = &quot;3&quot;</source>
        <translation>son numéro ou son nom : name = &quot;3&quot;</translation>
    </message>
    <message>
        <source>its name: name = &quot;L1&quot;</source>
        <translation>son nom : name = &quot;L1&quot;</translation>
    </message>
    <message>
        <source>the name of the wall: wall = &quot;A&quot;</source>
        <translation>le nom du mur : wall = &quot;A&quot;</translation>
    </message>
    <message>
        <source>its name: name = &quot;NE&quot;</source>
        <translation>son nom : name = &quot;NE&quot;</translation>
    </message>
    <message>
        <source>a corner: from = &quot;NE&quot;</source>
        <translation>un angle : from = &quot;NE&quot;</translation>
    </message>
    <message>
        <source>a corner: to = &quot;SW&quot;</source>
        <translation>un angle : to = &quot;SW&quot;</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has too many texts</source>
        <translation>« %1 » a trop de textes</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>au plus %1</translation>
    </message>
    <message>
        <source>a length as it was noted, in quotes, such as &quot;3.10.1&quot; or &quot;215 mm&quot;</source>
        <translation>une longueur comme elle a été notée, entre guillemets, comme &quot;3.10.1&quot; ou &quot;215 mm&quot;</translation>
    </message>
    <message>
        <source>the length as it was noted: note = &quot;3.10.1&quot;</source>
        <translation>la longueur comme elle a été notée : note = &quot;3.10.1&quot;</translation>
    </message>
    <message>
        <source>what its wood is like: what = &quot;rotten&quot;</source>
        <translation>comment est son bois : what = &quot;rotten&quot;</translation>
    </message>
    <message>
        <source>what became of the peg: state = &quot;missing&quot;</source>
        <translation>ce que la cheville est devenue : state = &quot;missing&quot;</translation>
    </message>
    <message>
        <source>the wall it lies in: wall = &quot;A&quot;</source>
        <translation>le mur où elle se trouve : wall = &quot;A&quot;</translation>
    </message>
    <message>
        <source>the round it lies in, the sill log being 1</source>
        <translation>le rang où elle se trouve, la pièce de seuil étant le 1</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not used here, only by %2</source>
        <translation>&quot;%1&quot; ne sert pas ici, seulement avec %2</translation>
    </message>
    <message>
        <source>a shoulder cannot be both deep and proud</source>
        <translation>un épaulement ne peut être à la fois creusé et en saillie</translation>
    </message>
    <message>
        <source>one of shoulder_deep and shoulder_proud</source>
        <translation>soit shoulder_deep, soit shoulder_proud</translation>
    </message>
    <message>
        <source>kind = &quot;saddle&quot;</source>
        <translation>kind = &quot;saddle&quot;</translation>
    </message>
    <message>
        <source>a full or half dovetail</source>
        <translation>une queue d’aronde entière ou demie</translation>
    </message>
    <message>
        <source>kind = &quot;stated&quot;</source>
        <translation>kind = &quot;stated&quot;</translation>
    </message>
    <message>
        <source>the slope of the tail&apos;s top along its own log, outward</source>
        <translation>la pente du dessus de la queue le long de sa propre pièce, vers l’extérieur</translation>
    </message>
    <message>
        <source>the slope of the tail&apos;s top along the crossing log, outward</source>
        <translation>la pente du dessus de la queue le long de la pièce croisée, vers l’extérieur</translation>
    </message>
    <message>
        <source>two walls that meet, such as between = [&quot;A&quot;, &quot;B&quot;]</source>
        <translation>deux murs qui se touchent, comme between = [&quot;A&quot;, &quot;B&quot;]</translation>
    </message>
    <message>
        <source>&quot;between&quot; does not name two walls</source>
        <translation>&quot;between&quot; ne nomme pas deux murs</translation>
    </message>
    <message>
        <source>walls &quot;%1&quot; and &quot;%2&quot; do not meet at a corner</source>
        <translation>les murs &quot;%1&quot; et &quot;%2&quot; ne se rencontrent pas à un angle</translation>
    </message>
    <message>
        <source>two walls that follow each other</source>
        <translation>deux murs qui se suivent</translation>
    </message>
    <message>
        <source>the corner of &quot;%1&quot; and &quot;%2&quot; is stated twice; the other one stands in line %3</source>
        <translation>l’angle de &quot;%1&quot; et &quot;%2&quot; est indiqué deux fois ; l’autre est à la ligne %3</translation>
    </message>
    <message>
        <source>one [[corner]] for each corner</source>
        <translation>un [[corner]] pour chaque angle</translation>
    </message>
    <message>
        <source>two openings are called &quot;%1&quot;; the other one stands in line %2</source>
        <translation>deux ouvertures s’appellent &quot;%1&quot; ; l’autre est à la ligne %2</translation>
    </message>
    <message>
        <source>a name of its own for each opening</source>
        <translation>un nom propre à chaque ouverture</translation>
    </message>
    <message>
        <source>the sill of a door is not sloped</source>
        <translation>le seuil d’une porte n’est pas en pente</translation>
    </message>
    <message>
        <source>kind = &quot;window&quot;</source>
        <translation>kind = &quot;window&quot;</translation>
    </message>
    <message>
        <source>the wall it is in: wall = &quot;A&quot;</source>
        <translation>le mur où elle se trouve : wall = &quot;A&quot;</translation>
    </message>
    <message>
        <source>the distance from the wall&apos;s left outside corner, seen from outside, to the left jamb</source>
        <translation>la distance de l’angle extérieur gauche du mur, vu de l’extérieur, au jambage gauche</translation>
    </message>
    <message>
        <source>the height of its underside over the foundation</source>
        <translation>la hauteur de son bas au-dessus de la fondation</translation>
    </message>
    <message>
        <source>the clear width between the jambs</source>
        <translation>la largeur libre entre les jambages</translation>
    </message>
    <message>
        <source>the clear height from sill to header</source>
        <translation>la hauteur libre de l’allège au linteau</translation>
    </message>
    <message>
        <source>the wall that stands on it: wall = &quot;A&quot;</source>
        <translation>le mur qui repose dessus : wall = &quot;A&quot;</translation>
    </message>
    <message>
        <source>the end it is at, seen from outside</source>
        <translation>le bout où elle est, vu de l’extérieur</translation>
    </message>
    <message>
        <source>the other slope of the tail&apos;s top: both, or neither</source>
        <translation>l’autre pente du dessus de la queue : les deux, ou aucune</translation>
    </message>
    <message>
        <source>where it starts, from the wall&apos;s left corner seen from outside</source>
        <translation>où elle commence, depuis l’angle gauche du mur vu de l’extérieur</translation>
    </message>
    <message>
        <source>how far it runs along the wall</source>
        <translation>sur quelle longueur elle suit le mur</translation>
    </message>
    <message>
        <source>how far along the log the new wood reaches</source>
        <translation>jusqu’où le bois neuf va le long de la pièce</translation>
    </message>
    <message>
        <source>kind = &quot;let in&quot;, &quot;face&quot; or &quot;splice&quot;</source>
        <translation>kind = &quot;let in&quot;, &quot;face&quot; ou &quot;splice&quot;</translation>
    </message>
    <message>
        <source>how much higher than the lowest foundation it is</source>
        <translation>de combien elle dépasse la fondation la plus basse</translation>
    </message>
    <message>
        <source>two of count, height and pitch; the third follows from them</source>
        <translation>deux de count, height et pitch ; le troisième en découle</translation>
    </message>
    <message>
        <source>[rounds] states count, height and pitch, which may contradict each other</source>
        <translation>[rounds] indique count, height et pitch, qui peuvent se contredire</translation>
    </message>
    <message>
        <source>[rounds] states only one of count, height and pitch</source>
        <translation>[rounds] n’indique qu’un seul de count, height et pitch</translation>
    </message>
    <message>
        <source>[rounds] states none of count, height and pitch</source>
        <translation>[rounds] n’indique ni count, ni height, ni pitch</translation>
    </message>
    <message>
        <source>a table [rounds] with two of count, height and pitch</source>
        <translation>une table [rounds] avec deux de count, height et pitch</translation>
    </message>
    <message>
        <source>use = &quot;bolt&quot;, &quot;rod&quot;, &quot;wire&quot; or &quot;hole&quot;</source>
        <translation>use = &quot;bolt&quot;, &quot;rod&quot;, &quot;wire&quot; ou &quot;hole&quot;</translation>
    </message>
    <message>
        <source>the wall it stands in: wall = &quot;A&quot;</source>
        <translation>le mur où il se trouve : wall = &quot;A&quot;</translation>
    </message>
    <message>
        <source>from the wall&apos;s left outside corner, seen from outside, to the bore&apos;s middle</source>
        <translation>de l’angle extérieur gauche du mur, vu de l’extérieur, au milieu du perçage</translation>
    </message>
    <message>
        <source>diameter = &quot;20 mm&quot;</source>
        <translation>diameter = &quot;20 mm&quot;</translation>
    </message>
    <message>
        <source>the bore ends below its start</source>
        <translation>le perçage se termine au-dessous de son début</translation>
    </message>
    <message>
        <source>round %1 or a higher one</source>
        <translation>le rang %1 ou un plus haut</translation>
    </message>
    <message>
        <source>a spline groove needs a width and a depth</source>
        <translation>une rainure de languette demande une largeur et une profondeur</translation>
    </message>
    <message>
        <source>both of spline_width and spline_depth, or neither</source>
        <translation>spline_width et spline_depth tous les deux, ou aucun</translation>
    </message>
    <message>
        <source>&quot;toward&quot; cannot be &quot;%1&quot;</source>
        <translation>&quot;toward&quot; ne peut être &quot;%1&quot;</translation>
    </message>
    <message>
        <source>name = &quot;A&quot;</source>
        <translation>name = &quot;A&quot;</translation>
    </message>
    <message>
        <source>name = &quot;P&quot;</source>
        <translation>name = &quot;P&quot;</translation>
    </message>
    <message>
        <source>the wall it starts in, stated before it: from = &quot;A&quot;</source>
        <translation>le mur où elle commence, indiqué avant elle : from = &quot;A&quot;</translation>
    </message>
    <message>
        <source>from_left = &quot;3 m&quot;, along that wall&apos;s outside to the middle of this one</source>
        <translation>from_left = &quot;3 m&quot;, le long de l’extérieur de ce mur jusqu’au milieu de celle-ci</translation>
    </message>
    <message>
        <source>the wall it ends in: to = &quot;C&quot;</source>
        <translation>le mur où elle finit : to = &quot;C&quot;</translation>
    </message>
    <message>
        <source>&quot;name&quot; of a %1 cannot be &quot;%2&quot;</source>
        <translation>&quot;name&quot; (%1) ne peut être &quot;%2&quot;</translation>
    </message>
    <message>
        <source>partition</source>
        <translation>cloison</translation>
    </message>
    <message>
        <source>1 to 8 letters and digits, such as &quot;A&quot;</source>
        <translation>1 à 8 lettres et chiffres, comme &quot;A&quot;</translation>
    </message>
    <message>
        <source>the name &quot;%1&quot; is taken; the other one stands in line %2</source>
        <translation>le nom &quot;%1&quot; est pris ; l’autre est à la ligne %2</translation>
    </message>
    <message>
        <source>a name of its own for each wall, partition and floor; capitals alone do not tell them apart</source>
        <translation>un nom propre à chaque mur, cloison et plancher ; les majuscules seules ne les distinguent pas</translation>
    </message>
    <message>
        <source>one [[wall]] for each side, walking once round the outside</source>
        <translation>un [[wall]] pour chaque côté, en faisant une fois le tour par l’extérieur</translation>
    </message>
    <message>
        <source>partition &quot;%1&quot; cannot end in wall &quot;%2&quot;</source>
        <translation>la cloison &quot;%1&quot; ne peut finir dans le mur &quot;%2&quot;</translation>
    </message>
    <message>
        <source>another wall than itself and the one it starts in</source>
        <translation>un autre mur qu’elle-même et que celui où elle commence</translation>
    </message>
    <message>
        <source>there is no wall &quot;%1&quot;</source>
        <translation>il n’y a pas de mur &quot;%1&quot;</translation>
    </message>
    <message>
        <source>there is no wall &quot;%1&quot; (did you mean &quot;%2&quot;?)</source>
        <translation>il n’y a pas de mur &quot;%1&quot; (vouliez-vous dire &quot;%2&quot; ?)</translation>
    </message>
    <message>
        <source>one of the walls %1</source>
        <translation>l’un des murs %1</translation>
    </message>
    <message>
        <source>a table [shell] with at least a thickness</source>
        <translation>une table [shell] avec au moins une épaisseur</translation>
    </message>
    <message>
        <source>thickness = &quot;8 in&quot;</source>
        <translation>thickness = &quot;8 in&quot;</translation>
    </message>
    <message>
        <source>a part of the lower log&apos;s height, over 0 and up to 1</source>
        <translation>une part de la hauteur de la pièce inférieure, plus de 0 et 1 au plus</translation>
    </message>
    <message>
        <source>&quot;species&quot; is empty</source>
        <translation>&quot;species&quot; est vide</translation>
    </message>
    <message>
        <source>the name of the opening: name = &quot;front door&quot;</source>
        <translation>le nom de l’ouverture : name = &quot;front door&quot;</translation>
    </message>
    <message>
        <source>the name of a wood, such as &quot;eastern hemlock&quot;</source>
        <translation>le nom d’un bois, comme &quot;eastern hemlock&quot;</translation>
    </message>
    <message>
        <source>percent of ovendry mass, from 0 to 300, without quotes</source>
        <translation>pour cent de la masse anhydre, de 0 à 300, sans guillemets</translation>
    </message>
    <message>
        <source>a length from -2 m to 2 m</source>
        <translation>une longueur de -2 m à 2 m</translation>
    </message>
    <message>
        <source>a text</source>
        <translation>un texte</translation>
    </message>
    <message>
        <source>a number</source>
        <translation>un nombre</translation>
    </message>
    <message>
        <source>true or false</source>
        <translation>true ou false</translation>
    </message>
    <message>
        <source>a list</source>
        <translation>une liste</translation>
    </message>
    <message>
        <source>a table</source>
        <translation>une table</translation>
    </message>
    <message>
        <source>a date or time</source>
        <translation>une date ou une heure</translation>
    </message>
    <message>
        <source>&quot;%1&quot; cannot be %2</source>
        <translation>&quot;%1&quot; ne peut être %2</translation>
    </message>
    <message>
        <source>&quot;%1&quot; cannot be &quot;%2&quot;</source>
        <translation>&quot;%1&quot; ne peut être &quot;%2&quot;</translation>
    </message>
    <message>
        <source>&quot;%1&quot; cannot be &quot;%2&quot; (did you mean &quot;%3&quot;?)</source>
        <translation>&quot;%1&quot; ne peut être &quot;%2&quot; (vouliez-vous dire &quot;%3&quot; ?)</translation>
    </message>
    <message>
        <source>&quot;%1&quot;: %2</source>
        <translation>&quot;%1&quot; : %2</translation>
    </message>
    <message>
        <source>one of %1</source>
        <translation>l’un de %1</translation>
    </message>
    <message>
        <source>a length with its unit in quotes, such as &quot;8 1/2 in&quot; or &quot;215 mm&quot;</source>
        <translation>une longueur avec son unité entre guillemets, comme &quot;8 1/2 in&quot; ou &quot;215 mm&quot;</translation>
    </message>
    <message>
        <source>a slope in quotes, such as &quot;1:8&quot; or &quot;7 deg&quot;</source>
        <translation>une pente entre guillemets, comme &quot;1:8&quot; ou &quot;7 deg&quot;</translation>
    </message>
    <message>
        <source>&quot;%1&quot; cannot be read: %2</source>
        <translation>&quot;%1&quot; ne peut être lu : %2</translation>
    </message>
    <message>
        <source>text in quotes</source>
        <translation>du texte entre guillemets</translation>
    </message>
    <message>
        <source>true or false, without quotes</source>
        <translation>true ou false, sans guillemets</translation>
    </message>
    <message>
        <source>a whole number from %1 to %2</source>
        <translation>un nombre entier de %1 à %2</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has a decimal point</source>
        <translation>&quot;%1&quot; a une virgule décimale</translation>
    </message>
    <message>
        <source>a list of texts, such as [&quot;A&quot;, &quot;B&quot;]</source>
        <translation>une liste de textes, comme [&quot;A&quot;, &quot;B&quot;]</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has no unit, and %2 kPa is %3 psf</source>
        <translation>&quot;%1&quot; n’a pas d’unité, et %2 kPa font %3 psf</translation>
    </message>
    <message>
        <source>the unit stated: %1 or %2</source>
        <translation>l’unité indiquée : %1 ou %2</translation>
    </message>
    <message>
        <source>the unit stated: %1</source>
        <translation>l’unité indiquée : %1</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is missing</source>
        <translation>&quot;%1&quot; manque</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is missing in [%2]</source>
        <translation>&quot;%1&quot; manque dans [%2]</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is missing in this [[%2]]</source>
        <translation>&quot;%1&quot; manque dans ce [[%2]]</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is stated once in a document</source>
        <translation>&quot;%1&quot; est indiqué une seule fois par document</translation>
    </message>
    <message>
        <source>one bracket on each side: %1</source>
        <translation>un crochet de chaque côté : %1</translation>
    </message>
    <message>
        <source>a table with the header %1</source>
        <translation>une table avec l’en-tête %1</translation>
    </message>
    <message>
        <source>two brackets on each side, once for each: %1</source>
        <translation>deux crochets de chaque côté, une fois pour chacun : %1</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has more than %2 entries %3</source>
        <translation>&quot;%1&quot; a plus de %2 entrées %3</translation>
    </message>
    <message>
        <source>a table by a name that is known</source>
        <translation>une table d’un nom connu</translation>
    </message>
    <message>
        <source>a shell that can be built</source>
        <translation>une coque qui peut être construite</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not known here and is not used</source>
        <translation>&quot;%1&quot; n’est pas connu ici et ne sert pas</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not known here and is not used (did you mean &quot;%2&quot;?)</source>
        <translation>&quot;%1&quot; n’est pas connu ici et ne sert pas (vouliez-vous dire &quot;%2&quot; ?)</translation>
    </message>
    <message>
        <source>wall %1</source>
        <translation>mur %1</translation>
    </message>
    <message>
        <source>round %1</source>
        <translation>rang %1</translation>
    </message>
    <message>
        <source>corner %1</source>
        <translation>angle %1</translation>
    </message>
    <message>
        <source>floor %1</source>
        <translation>plancher %1</translation>
    </message>
    <message>
        <source>joist %1</source>
        <translation>solive %1</translation>
    </message>
    <message>
        <source>trimmed joist %1</source>
        <translation>solive boiteuse %1</translation>
    </message>
    <message>
        <source>trimmer %1</source>
        <translation>chevêtre %1</translation>
    </message>
    <message>
        <source>beam %1</source>
        <translation>poutre %1</translation>
    </message>
    <message>
        <source>bolt %1</source>
        <translation>boulon %1</translation>
    </message>
    <message>
        <source>rod %1</source>
        <translation>tirant %1</translation>
    </message>
    <message>
        <source>wiring %1</source>
        <translation>câblage %1</translation>
    </message>
    <message>
        <source>hole %1</source>
        <translation>trou %1</translation>
    </message>
    <message>
        <source>step %1</source>
        <translation>ressaut %1</translation>
    </message>
    <message>
        <source>door %1</source>
        <translation>porte %1</translation>
    </message>
    <message>
        <source>window %1</source>
        <translation>fenêtre %1</translation>
    </message>
    <message>
        <source>door %1 in wall %2</source>
        <translation>porte %1 du mur %2</translation>
    </message>
    <message>
        <source>window %1 in wall %2</source>
        <translation>fenêtre %1 du mur %2</translation>
    </message>
    <message>
        <source>no templates were made: this shell has no tails, notches or pockets that are to be cut to a line; round logs are scribed in place, and what stands has its own</source>
        <translation>aucun gabarit : cette structure n’a ni queue, ni entaille, ni mortaise à tailler au trait ; les rondins sont tracés en place, et ce qui tient debout a les siens</translation>
    </message>
    <message>
        <source>the length is empty</source>
        <translation>la longueur est vide</translation>
    </message>
    <message>
        <source>the slope is empty</source>
        <translation>la pente est vide</translation>
    </message>
    <message>
        <source>a length such as 8 1/2 in or 215 mm</source>
        <translation>une longueur telle que 8 1/2 in ou 215 mm</translation>
    </message>
    <message>
        <source>a number such as 12, 1.5, 3/16 or 6 1/2</source>
        <translation>un nombre tel que 12, 1.5, 3/16 ou 6 1/2</translation>
    </message>
    <message>
        <source>a slope such as 1:8, 7.125 deg, 1 in in 8 in, 0.125 or level</source>
        <translation>une pente telle que 1:8, 7.125 deg, 1 in in 8 in, 0.125 ou level</translation>
    </message>
    <message>
        <source>a number is missing</source>
        <translation>un nombre manque</translation>
    </message>
    <message>
        <source>%1 stands where a number should</source>
        <translation>%1 est là où un nombre est attendu</translation>
    </message>
    <message>
        <source>%1 is not a unit of length</source>
        <translation>%1 n’est pas une unité de longueur</translation>
    </message>
    <message>
        <source>mm, cm, m, in, ft, or the marks &apos; for feet and &quot; for inches</source>
        <translation>mm, cm, m, in, ft, ou les signes ’ pour pieds et &quot; pour pouces</translation>
    </message>
    <message>
        <source>%1 stands behind the end of the length</source>
        <translation>%1 suit la fin de la longueur</translation>
    </message>
    <message>
        <source>%1 stands behind the end of the slope</source>
        <translation>%1 suit la fin de la pente</translation>
    </message>
    <message>
        <source>feet in front of inches must be a whole number</source>
        <translation>devant des pouces les pieds doivent être un nombre entier</translation>
    </message>
    <message>
        <source>the number behind the feet has no unit</source>
        <translation>le nombre derrière les pieds n’a pas d’unité</translation>
    </message>
    <message>
        <source>only inches can stand behind feet</source>
        <translation>seuls des pouces peuvent suivre des pieds</translation>
    </message>
    <message>
        <source>inches behind feet are not under 12</source>
        <translation>les pouces derrière des pieds ne sont pas sous 12</translation>
    </message>
    <message>
        <source>such as %1</source>
        <translation>par exemple %1</translation>
    </message>
    <message>
        <source>the length is over 1000 km</source>
        <translation>la longueur dépasse 1000 km</translation>
    </message>
    <message>
        <source>a length that a shell can have</source>
        <translation>une longueur qu’une coque peut avoir</translation>
    </message>
    <message>
        <source>the slope is steeper than 10:1 (84 degrees)</source>
        <translation>la pente dépasse 10:1 (84 degrés)</translation>
    </message>
    <message>
        <source>a slope needs a run over 0</source>
        <translation>une pente demande une base au-dessus de 0</translation>
    </message>
    <message>
        <source>the rise is not followed by &quot;in&quot; and a run</source>
        <translation>la montée n’est pas suivie de « in » et d’une base</translation>
    </message>
    <message>
        <source>a comma in a number can be read in two ways</source>
        <translation>une virgule dans un nombre se lit de deux façons</translation>
    </message>
    <message>
        <source>a decimal point and no thousands mark, such as 2.4 or 2400</source>
        <translation>un point décimal et pas de séparateur de milliers, tel que 2.4 ou 2400</translation>
    </message>
    <message>
        <source>no digit stands behind the decimal point</source>
        <translation>aucun chiffre ne suit le point décimal</translation>
    </message>
    <message>
        <source>no whole number stands under the fraction bar</source>
        <translation>aucun nombre entier n’est sous la barre de fraction</translation>
    </message>
    <message>
        <source>a fraction cannot have zero under the bar</source>
        <translation>une fraction ne peut avoir zéro sous la barre</translation>
    </message>
    <message>
        <source>the fraction behind a whole number is not under 1</source>
        <translation>la fraction derrière un nombre entier n’est pas sous 1</translation>
    </message>
    <message>
        <source>the number has too many digits to be read exactly</source>
        <translation>le nombre a trop de chiffres pour être lu exactement</translation>
    </message>
    <message>
        <source>at most 30 digits</source>
        <translation>au plus 30 chiffres</translation>
    </message>
    <message>
        <source>the number has no unit</source>
        <translation>le nombre n’a pas d’unité</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>rien</translation>
    </message>
    <message>
        <source>cannot write &quot;%1&quot;: %2</source>
        <translation>impossible d’écrire « %1 » : %2</translation>
    </message>
    <message>
        <source>cannot read &quot;%1&quot;: %2</source>
        <translation>impossible de lire « %1 » : %2</translation>
    </message>
    <message>
        <source>cannot make the folder &quot;%1&quot;: %2</source>
        <translation>impossible de créer le dossier « %1 » : %2</translation>
    </message>
    <message>
        <source>cannot replace &quot;%1&quot;: %2</source>
        <translation>impossible de remplacer « %1 » : %2</translation>
    </message>
    <message>
        <source>cannot remove &quot;%1&quot;: %2</source>
        <translation>impossible d’ôter « %1 » : %2</translation>
    </message>
    <message>
        <source>no space is left on the disk; free some or choose another folder</source>
        <translation>il n’y a plus de place sur le disque ; libérez-en ou choisissez un autre dossier</translation>
    </message>
    <message>
        <source>you may not write there; choose a folder of your own or change its rights</source>
        <translation>vous n’avez pas le droit d’y écrire ; choisissez un dossier à vous ou changez ses droits</translation>
    </message>
    <message>
        <source>the disk is read-only; choose a folder on another one</source>
        <translation>le disque est en lecture seule ; choisissez un dossier sur un autre</translation>
    </message>
    <message>
        <source>part of the path is a file, not a folder; rename that file or choose another path</source>
        <translation>une partie du chemin est un fichier, non un dossier ; renommez ce fichier ou choisissez un autre chemin</translation>
    </message>
    <message>
        <source>a file of that name stands in the way; rename it or choose another path</source>
        <translation>un fichier de ce nom barre le chemin ; renommez-le ou choisissez un autre chemin</translation>
    </message>
    <message>
        <source>a folder of that name stands in the way; rename it or choose another path</source>
        <translation>un dossier de ce nom barre le chemin ; renommez-le ou choisissez un autre chemin</translation>
    </message>
    <message>
        <source>there is no such file or folder; check the path</source>
        <translation>il n’y a pas de tel fichier ou dossier ; vérifiez le chemin</translation>
    </message>
    <message>
        <source>the name is too long; choose a shorter one</source>
        <translation>le nom est trop long ; choisissez-en un plus court</translation>
    </message>
    <message>
        <source>cannot write &quot;%1&quot;: another export is writing there; wait until it is done or choose another folder</source>
        <translation>impossible d’écrire « %1 » : une autre exportation y écrit ; attendez qu’elle ait fini ou choisissez un autre dossier</translation>
    </message>
    <message>
        <source>the files in &quot;%1&quot; were made from another document, %2; nothing was written; choose another folder, or replace them</source>
        <translation>les fichiers dans &quot;%1&quot; viennent d’un autre document, %2 ; rien n’a été écrit ; choisissez un autre dossier, ou remplacez-les</translation>
    </message>
    <message>
        <source>the document has states, and its own shell has no name among them</source>
        <translation>le document a des états, et sa propre coque n’a pas de nom parmi eux</translation>
    </message>
    <message>
        <source>state = &quot;as found&quot; in [shell]</source>
        <translation>state = &quot;as found&quot; dans [shell]</translation>
    </message>
    <message>
        <source>&quot;name&quot; of a state is empty</source>
        <translation>« name » d’un état est vide</translation>
    </message>
    <message>
        <source>name = &quot;as it shall stand&quot;</source>
        <translation>name = &quot;as it shall stand&quot;</translation>
    </message>
    <message>
        <source>what it is called: name = &quot;as it shall stand&quot;</source>
        <translation>comment il s’appelle : name = &quot;as it shall stand&quot;</translation>
    </message>
    <message>
        <source>two states are called %1; the other one stands in line %2</source>
        <translation>deux états s’appellent %1 ; l’autre se trouve à la ligne %2</translation>
    </message>
    <message>
        <source>a name of its own for each state</source>
        <translation>un nom à lui pour chaque état</translation>
    </message>
    <message>
        <source>there is no state %1</source>
        <translation>il n’y a pas d’état %1</translation>
    </message>
    <message>
        <source>there is no state %1 (did you mean &quot;%2&quot;?)</source>
        <translation>il n’y a pas d’état %1 (vouliez-vous dire « %2 » ?)</translation>
    </message>
    <message>
        <source>one of the states %1</source>
        <translation>un des états %1</translation>
    </message>
    <message>
        <source>a document with states: [[state]]</source>
        <translation>un document qui a des états : [[state]]</translation>
    </message>
    <message>
        <source>states stand on one another: %1</source>
        <translation>des états reposent l’un sur l’autre : %1</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <translation>%1 sur %2</translation>
    </message>
    <message>
        <source>one of them on the document&apos;s own shell</source>
        <translation>l’un d’eux sur la coque du document</translation>
    </message>
    <message>
        <source>state %1 takes away %2, and says %3 of it</source>
        <translation>l’état %1 enlève %2, et en dit %3</translation>
    </message>
    <message>
        <source>gone = true and what tells the entry, nothing else</source>
        <translation>gone = true et ce qui désigne l’entrée, rien d’autre</translation>
    </message>
    <message>
        <source>%1 is said of an entry, or is not</source>
        <translation>%1 est dit d’une entrée, ou ne l’est pas</translation>
    </message>
    <message>
        <source>&quot;before&quot; names the entry that a new one comes to stand before</source>
        <translation>« before » nomme l’entrée devant laquelle une nouvelle vient se placer</translation>
    </message>
    <message>
        <source>before = &quot;B&quot; beside new = true</source>
        <translation>before = &quot;B&quot; à côté de new = true</translation>
    </message>
    <message>
        <source>&quot;left_out&quot; does not name keys</source>
        <translation>« left_out » ne nomme pas de clés</translation>
    </message>
    <message>
        <source>a list of keys, such as left_out = [&quot;pitch&quot;]</source>
        <translation>une liste de clés, comme left_out = [&quot;pitch&quot;]</translation>
    </message>
    <message>
        <source>state %1 states %2 and leaves it out</source>
        <translation>l’état %1 énonce %2 et l’omet</translation>
    </message>
    <message>
        <source>state %1 leaves out %2, which state %3 does not state</source>
        <translation>l’état %1 omet %2, que l’état %3 n’énonce pas</translation>
    </message>
    <message>
        <source>a key that is stated there and not here</source>
        <translation>une clé énoncée là et pas ici</translation>
    </message>
    <message>
        <source>state %1 takes away %2, which state %3 does not have</source>
        <translation>l’état %1 enlève %2, que l’état %3 n’a pas</translation>
    </message>
    <message>
        <source>a table that is there</source>
        <translation>une table qui y est</translation>
    </message>
    <message>
        <source>an entry that is there</source>
        <translation>une entrée qui y est</translation>
    </message>
    <message>
        <source>an entry that is there; it only says more of a log or corner, and takes none away</source>
        <translation>une entrée qui y est ; elle n’en dit que plus d’une pièce ou d’un angle, et n’en enlève pas</translation>
    </message>
    <message>
        <source>state %1 adds %2 before %3, and state %4 has none of that name</source>
        <translation>l’état %1 ajoute %2 devant %3, et l’état %4 n’en a pas de ce nom</translation>
    </message>
    <message>
        <source>the name of an entry that is there</source>
        <translation>le nom d’une entrée qui y est</translation>
    </message>
    <message>
        <source>%1 stands there %2 times in state %3, so that nobody knows which one state %4 changes</source>
        <translation>%1 se trouve %2 fois dans l’état %3, si bien que nul ne sait laquelle change l’état %4</translation>
    </message>
    <message>
        <source>entries that differ in what tells them</source>
        <translation>des entrées qui diffèrent par ce qui les désigne</translation>
    </message>
    <message>
        <source>state %1 adds %2, which state %3 has</source>
        <translation>l’état %1 ajoute %2, que l’état %3 a déjà</translation>
    </message>
    <message>
        <source>a name of its own, or no new = true to change that one</source>
        <translation>un nom à elle, ou pas de new = true pour changer celle-là</translation>
    </message>
    <message>
        <source>state %1 changes %2, which state %3 does not have</source>
        <translation>l’état %1 change %2, que l’état %3 n’a pas</translation>
    </message>
    <message>
        <source>an entry that is there, or new = true for one that comes with this state</source>
        <translation>une entrée qui y est, ou new = true pour une qui vient avec cet état</translation>
    </message>
    <message>
        <source>state %1 does not say which entry it changes</source>
        <translation>l’état %1 ne dit pas quelle entrée il change</translation>
    </message>
    <message>
        <source>%1 of the entry, or new = true for one that comes with this state</source>
        <translation>%1 de l’entrée, ou new = true pour une qui vient avec cet état</translation>
    </message>
    <message>
        <source>state %1 changes %2 twice; the other one stands in line %3</source>
        <translation>l’état %1 change %2 deux fois ; l’autre fois se trouve à la ligne %3</translation>
    </message>
    <message>
        <source>one entry with all of it</source>
        <translation>une seule entrée qui dit tout</translation>
    </message>
    <message>
        <source>state %1 does not state %2 as entries</source>
        <translation>l’état %1 n’énonce pas %2 comme entrées</translation>
    </message>
    <message>
        <source>two brackets on each side, once for each: [[state.%1]]</source>
        <translation>deux crochets de chaque côté, une fois pour chacune : [[state.%1]]</translation>
    </message>
    <message>
        <source>%1 cannot stand in a state: what was found is of the house, not of one of its states</source>
        <translation>%1 ne peut se trouver dans un état : ce qui a été trouvé est de la maison, pas d’un de ses états</translation>
    </message>
    <message>
        <source>%1 in the document</source>
        <translation>%1 dans le document</translation>
    </message>
    <message>
        <source>state %1 does not state %2 as a table</source>
        <translation>l’état %1 n’énonce pas %2 comme table</translation>
    </message>
    <message>
        <source>a table with the header [state.%1]</source>
        <translation>une table avec l’en-tête [state.%1]</translation>
    </message>
    <message>
        <source>a state is called by its own name, not by one in [state.shell]</source>
        <translation>un état s’appelle par son propre nom, pas par un nom dans [state.shell]</translation>
    </message>
    <message>
        <source>name = &quot;as it shall stand&quot; in [[state]]</source>
        <translation>name = &quot;as it shall stand&quot; dans [[state]]</translation>
    </message>
    <message>
        <source>%1 cannot stand in a state</source>
        <translation>%1 ne peut se trouver dans un état</translation>
    </message>
    <message>
        <source>it in the document</source>
        <translation>le dans le document</translation>
    </message>
    <message>
        <source>in state %1: %2</source>
        <translation>dans l’état %1 : %2</translation>
    </message>
    <message>
        <source>what becomes of the log: what = &quot;keep&quot;</source>
        <translation>ce qu’il advient de la pièce : what = &quot;keep&quot;</translation>
    </message>
    <message>
        <source>the wall that the log goes to: wall = &quot;A&quot;</source>
        <translation>le mur où va la pièce : wall = &quot;A&quot;</translation>
    </message>
    <message>
        <source>the round that the log goes to, the sill log being 1</source>
        <translation>le rang où va la pièce, la sablière étant 1</translation>
    </message>
    <message>
        <source>what = &quot;use elsewhere&quot;</source>
        <translation>what = &quot;use elsewhere&quot;</translation>
    </message>
    <message>
        <source>no state under this one is measured: nothing tells what had sunk</source>
        <translation>aucun état au-dessous de celui-ci n’est mesuré : rien ne dit ce qui s’était affaissé</translation>
    </message>
    <message>
        <source>on = the name of a state that is measured</source>
        <translation>on = le nom d’un état qui est mesuré</translation>
    </message>
    <message>
        <source>a state that is measured shows the house as it was found, and cannot be levelled</source>
        <translation>un état mesuré montre la maison telle qu’elle a été trouvée et ne peut pas être mis de niveau</translation>
    </message>
    <message>
        <source>the files in &quot;%1&quot; were made from another state of the house, &quot;%2&quot;; nothing was written; choose another folder, or replace them</source>
        <translation>les fichiers dans « %1 » viennent d’un autre état de la maison, « %2 » ; rien n’a été écrit ; choisissez un autre dossier, ou remplacez-les</translation>
    </message>
    <message>
        <source>files of your own stand in the way in &quot;%1&quot; (made by no export, or changed since): %2; nothing was written; move them, choose another folder, or replace them</source>
        <translation>des fichiers à vous sont sur le chemin dans « %1 » (faits par aucune exportation, ou modifiés depuis) : %2 ; rien n’a été écrit ; déplacez-les, choisissez un autre dossier ou remplacez-les</translation>
    </message>
    <message>
        <source>%1 and %2 more</source>
        <translation>%1 et %2 autres</translation>
    </message>
    <message>
        <source>the exporter &quot;%1&quot; failed: %2</source>
        <translation>l’exportateur « %1 » a échoué : %2</translation>
    </message>
    <message>
        <source>this list</source>
        <translation>cette liste</translation>
    </message>
    <message>
        <source>stopped; nothing was written</source>
        <translation>arrêté ; rien n’a été écrit</translation>
    </message>
    <message>
        <source>cut sheets</source>
        <translation>fiches de taille</translation>
    </message>
    <message>
        <source>operations</source>
        <translation>opérations</translation>
    </message>
    <message>
        <source>cut lists</source>
        <translation>listes de débit</translation>
    </message>
    <message>
        <source>field forms</source>
        <translation>fiches de relevé</translation>
    </message>
    <message>
        <source>the file would be larger than is allowed here; choose another disk or raise the limit</source>
        <translation>le fichier serait plus grand que permis ici ; choisissez un autre disque ou levez la limite</translation>
    </message>
    <message>
        <source>part of the folder lies on another disk; choose a folder that lies on one</source>
        <translation>une partie du dossier est sur un autre disque ; choisissez un dossier qui tient sur un seul</translation>
    </message>
    <message>
        <source>cannot use &quot;%1&quot;: %2</source>
        <translation>impossible d’utiliser « %1 » : %2</translation>
    </message>
    <message>
        <source>&quot;%1&quot; cannot be read as a load</source>
        <translation>« %1 » n’est pas une charge lisible</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is out of bounds</source>
        <translation>« %1 » est hors des limites</translation>
    </message>
    <message>
        <source>a length over 0 and up to 100 m</source>
        <translation>une longueur au-dessus de 0 et jusqu’à 100 m</translation>
    </message>
    <message>
        <source>a length from 0 to 100 m</source>
        <translation>une longueur de 0 à 100 m</translation>
    </message>
    <message>
        <source>a length over 0 and up to 2 m</source>
        <translation>une longueur au-dessus de 0 et jusqu’à 2 m</translation>
    </message>
    <message>
        <source>a length from 0 to 2 m</source>
        <translation>une longueur de 0 à 2 m</translation>
    </message>
    <message>
        <source>&quot;%1&quot; of %2 is out of bounds</source>
        <translation>%2 : « %1 » est hors des limites</translation>
    </message>
    <message>
        <source>wall &quot;%1&quot;</source>
        <translation>mur « %1 »</translation>
    </message>
    <message>
        <source>partition &quot;%1&quot;</source>
        <translation>cloison « %1 »</translation>
    </message>
    <message>
        <source>partition %1</source>
        <translation>cloison %1</translation>
    </message>
    <message>
        <source>floor &quot;%1&quot;</source>
        <translation>plancher « %1 »</translation>
    </message>
    <message>
        <source>opening &quot;%1&quot; in wall &quot;%2&quot;</source>
        <translation>ouverture « %1 » du mur « %2 »</translation>
    </message>
    <message>
        <source>opening %1 in wall &quot;%2&quot;</source>
        <translation>ouverture %1 du mur « %2 »</translation>
    </message>
    <message>
        <source>opening &quot;%1&quot; of %2</source>
        <translation>trémie « %1 » du %2</translation>
    </message>
    <message>
        <source>opening %1 of %2</source>
        <translation>trémie %1 du %2</translation>
    </message>
    <message>
        <source>opening &quot;%1&quot;</source>
        <translation>ouverture « %1 »</translation>
    </message>
    <message>
        <source>opening %1</source>
        <translation>ouverture %1</translation>
    </message>
    <message>
        <source>beam %1 of %2</source>
        <translation>poutre %1 du %2</translation>
    </message>
    <message>
        <source>round %1 of wall &quot;%2&quot;</source>
        <translation>rang %1 du mur « %2 »</translation>
    </message>
    <message>
        <source>end %1</source>
        <translation>bout %1</translation>
    </message>
    <message>
        <source>station %1</source>
        <translation>point de mesure %1</translation>
    </message>
    <message>
        <source>zone %1</source>
        <translation>zone %1</translation>
    </message>
    <message>
        <source>test %1</source>
        <translation>sondage %1</translation>
    </message>
    <message>
        <source>moisture %1</source>
        <translation>humidité %1</translation>
    </message>
    <message>
        <source>peg %1</source>
        <translation>cheville %1</translation>
    </message>
    <message>
        <source>later_cut %1</source>
        <translation>taille postérieure %1</translation>
    </message>
    <message>
        <source>log &quot;%1&quot;</source>
        <translation>pièce « %1 »</translation>
    </message>
    <message>
        <source>%1 of log &quot;%2&quot;</source>
        <translation>%1 de la pièce « %2 »</translation>
    </message>
    <message>
        <source>the shell has %1 rounds, and log &quot;%2&quot; is noted in round %3: look at the sheet again, or mend the shell&apos;s rounds</source>
        <translation>la coque a %1 rangs, et la pièce « %2 » est notée au rang %3 : revoyez la feuille, ou corrigez les rangs de la coque</translation>
    </message>
    <message>
        <source>log %1 in wall &quot;%2&quot;</source>
        <translation>pièce %1 du mur « %2 »</translation>
    </message>
    <message>
        <source>log %1</source>
        <translation>pièce %1</translation>
    </message>
    <message>
        <source>step %1 in wall &quot;%2&quot;</source>
        <translation>ressaut %1 du mur « %2 »</translation>
    </message>
    <message>
        <source>bore &quot;%1&quot; in wall &quot;%2&quot;</source>
        <translation>perçage « %1 » du mur « %2 »</translation>
    </message>
    <message>
        <source>bore %1 in wall &quot;%2&quot;</source>
        <translation>perçage %1 du mur « %2 »</translation>
    </message>
    <message>
        <source>bore &quot;%1&quot;</source>
        <translation>perçage « %1 »</translation>
    </message>
    <message>
        <source>bore %1</source>
        <translation>perçage %1</translation>
    </message>
    <message>
        <source>the corner of &quot;%1&quot; and &quot;%2&quot;</source>
        <translation>angle de « %1 » et « %2 »</translation>
    </message>
    <message>
        <source>a length over 0 and up to 328 ft</source>
        <translation>une longueur au-dessus de 0 et jusqu’à 328 ft</translation>
    </message>
    <message>
        <source>a length from 0 to 328 ft</source>
        <translation>une longueur de 0 à 328 ft</translation>
    </message>
    <message>
        <source>a length over 0 and up to 6 ft 6 in</source>
        <translation>une longueur au-dessus de 0 et jusqu’à 6 ft 6 in</translation>
    </message>
    <message>
        <source>a length from 0 to 6 ft 6 in</source>
        <translation>une longueur de 0 à 6 ft 6 in</translation>
    </message>
    <message>
        <source>a length from -6 ft 6 in to 6 ft 6 in</source>
        <translation>une longueur de -6 ft 6 in à 6 ft 6 in</translation>
    </message>
    <message>
        <source>a slope that is not negative</source>
        <translation>une pente qui n’est pas négative</translation>
    </message>
    <message>
        <source>a load over 0 up to 50 kPa: a number up to 10 in kPa without quotes, or text with its unit such as &quot;40 psf&quot;</source>
        <translation>une charge au-dessus de 0 et jusqu’à 50 kPa : un nombre jusqu’à 10 en kPa sans guillemets, ou un texte avec son unité, par exemple &quot;40 psf&quot;</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is too long</source>
        <translation>« %1 » est trop long</translation>
    </message>
    <message>
        <source>at most 200 characters</source>
        <translation>200 caractères au plus</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has a control character in it</source>
        <translation>« %1 » contient un caractère de commande</translation>
    </message>
    <message>
        <source>plain text on one line</source>
        <translation>du texte simple sur une ligne</translation>
    </message>
    <message>
        <source>joists cannot lie from wall &quot;%1&quot; to itself</source>
        <translation>des solives ne peuvent aller du mur « %1 » à lui-même</translation>
    </message>
    <message>
        <source>the wall across the room</source>
        <translation>le mur d’en face</translation>
    </message>
    <message>
        <source>expected a comment or whitespace, saw %1</source>
        <translation>attendu : un commentaire ou un blanc, lu : %1</translation>
    </message>
    <message>
        <source>expected value, saw %1</source>
        <translation>attendu : une valeur, lu : %1</translation>
    </message>
    <message>
        <source>expected decimal digit, saw %1</source>
        <translation>attendu : un chiffre, lu : %1</translation>
    </message>
    <message>
        <source>expected digit, saw %1</source>
        <translation>attendu : un chiffre, lu : %1</translation>
    </message>
    <message>
        <source>expected expected digit or sign, saw %1</source>
        <translation>attendu : un chiffre ou un signe, lu : %1</translation>
    </message>
    <message>
        <source>expected bare key starting character or string delimiter, saw %1</source>
        <translation>attendu : le début d’un nom ou un guillemet, lu : %1</translation>
    </message>
    <message>
        <source>expected keys, tables, whitespace or comments, saw %1</source>
        <translation>attendu : un nom, une table, un blanc ou un commentaire, lu : %1</translation>
    </message>
    <message>
        <source>expected key-value pair, saw closing &apos;}&apos; (dangling comma)</source>
        <translation>attendu : un nom et sa valeur, lu : &apos;}&apos; après une virgule</translation>
    </message>
    <message>
        <source>expected %1, saw %2</source>
        <translation>attendu : %1, lu : %2</translation>
    </message>
    <message>
        <source>could not determine value type</source>
        <translation>on ne voit pas de quelle sorte est la valeur</translation>
    </message>
    <message>
        <source>unescaped control characters other than TAB (U+0009) are explicitly prohibited</source>
        <translation>un texte entre guillemets ne tient aucun caractère de commande hormis la tabulation, et finit sur sa ligne</translation>
    </message>
    <message>
        <source>control characters other than TAB (U+0009) are explicitly prohibited</source>
        <translation>aucun caractère de commande hormis la tabulation n’est permis</translation>
    </message>
    <message>
        <source>leading zeroes are prohibited</source>
        <translation>un nombre ne commence pas par un zéro</translation>
    </message>
    <message>
        <source>cannot redefine existing %1 &apos;%2&apos; as %3</source>
        <translation>« %2 » est déjà là, sous une autre forme</translation>
    </message>
    <message>
        <source>cannot redefine existing %1 &apos;%2&apos;</source>
        <translation>« %2 » est déjà là</translation>
    </message>
    <message>
        <source>encountered end-of-file</source>
        <translation>le fichier finit là</translation>
    </message>
    <message>
        <source>unknown escape sequence &apos;%1&apos;</source>
        <translation>la suite « %1 » n’est pas connue</translation>
    </message>
    <message>
        <source>values may not begin with underscores</source>
        <translation>une valeur ne commence pas par un trait bas</translation>
    </message>
    <message>
        <source>underscores must be followed by digits</source>
        <translation>un trait bas est suivi de chiffres</translation>
    </message>
    <message>
        <source>underscores may only follow digits</source>
        <translation>un trait bas suit des chiffres</translation>
    </message>
    <message>
        <source>this change cannot be stated in state %1 alone</source>
        <translation>ce changement ne peut être énoncé dans l’état %1 seul</translation>
    </message>
    <message>
        <source>the change written in the text of that state, or made in the state that it stands on</source>
        <translation>le changement écrit dans le texte de cet état, ou fait dans l’état sur lequel il repose</translation>
    </message>
</context>
</TS>
